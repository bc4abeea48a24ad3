package org.daybank.core.quantity;

/**
 * Power of sunlight falling on a square metre.
 *
 * @param wattsPerSquareMetre the irradiance in W/m², finite and not negative
 */
public record Irradiance(double wattsPerSquareMetre) implements Quantity, Comparable<Irradiance> {

    /** Nothing. */
    public static final Irradiance ZERO = new Irradiance(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Irradiance {
        wattsPerSquareMetre = Finite.notNegative(wattsPerSquareMetre, "irradiance", "W/m²");
    }

    /** Irradiance in W/m². */
    public static Irradiance wattsPerSquareMetre(double wattsPerSquareMetre) {
        return new Irradiance(wattsPerSquareMetre);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 W/m²"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not an irradiance; the message says what would be
     */
    public static Irradiance parse(CharSequence text) {
        return new Irradiance(UnitTables.IRRADIANCE.parse(text));
    }

    /** This irradiance as a number of the given unit. */
    public double in(IrradianceUnit unit) {
        return unit.definition().scale().fromBase(wattsPerSquareMetre);
    }

    /** Sum of the two. */
    public Irradiance plus(Irradiance other) {
        return new Irradiance(wattsPerSquareMetre + other.wattsPerSquareMetre);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Irradiance minus(Irradiance other) {
        return new Irradiance(wattsPerSquareMetre - other.wattsPerSquareMetre);
    }

    /** This many times as much. */
    public Irradiance times(double factor) {
        return new Irradiance(wattsPerSquareMetre * factor);
    }

    /** This share of it. */
    public Irradiance times(Ratio share) {
        return new Irradiance(wattsPerSquareMetre * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Irradiance dividedBy(double divisor) {
        return new Irradiance(wattsPerSquareMetre / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Irradiance other) {
        return Finite.number(wattsPerSquareMetre / other.wattsPerSquareMetre, "ratio of two irradiance values", "");
    }

    /** Irradiation gathered at this irradiance over a time. */
    public Irradiation times(TimeSpan time) {
        return Irradiation.kilowattHoursPerSquareMetre(wattsPerSquareMetre * time.hours() / 1000);
    }

    @Override
    public double baseValue() {
        return wattsPerSquareMetre;
    }

    @Override
    public IrradianceUnit baseUnit() {
        return IrradianceUnit.WATT_PER_SQUARE_METRE;
    }

    @Override
    public int compareTo(Irradiance other) {
        return Double.compare(wattsPerSquareMetre, other.wattsPerSquareMetre);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.IRRADIANCE.print(wattsPerSquareMetre);
    }
}
