package org.daybank.core.quantity;

/**
 * Energy of sunlight gathered on a square metre.
 *
 * @param kilowattHoursPerSquareMetre the irradiation in kWh/m², finite and not negative
 */
public record Irradiation(double kilowattHoursPerSquareMetre) implements Quantity, Comparable<Irradiation> {

    /** Nothing. */
    public static final Irradiation ZERO = new Irradiation(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Irradiation {
        kilowattHoursPerSquareMetre = Finite.notNegative(kilowattHoursPerSquareMetre, "irradiation", "kWh/m²");
    }

    /** Irradiation in kWh/m². */
    public static Irradiation kilowattHoursPerSquareMetre(double kilowattHoursPerSquareMetre) {
        return new Irradiation(kilowattHoursPerSquareMetre);
    }

    /** Irradiation in Wh/m². */
    public static Irradiation wattHoursPerSquareMetre(double wattHoursPerSquareMetre) {
        return new Irradiation(wattHoursPerSquareMetre / 1000);
    }

    /** Irradiation in MJ/m². */
    public static Irradiation megajoulesPerSquareMetre(double megajoulesPerSquareMetre) {
        return new Irradiation(megajoulesPerSquareMetre / 3.6);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 kWh/m²"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not an irradiation; the message says what would be
     */
    public static Irradiation parse(CharSequence text) {
        return new Irradiation(UnitTables.IRRADIATION.parse(text));
    }

    /** This irradiation in Wh/m². */
    public double wattHoursPerSquareMetre() {
        return kilowattHoursPerSquareMetre * 1000;
    }

    /** This irradiation in MJ/m². */
    public double megajoulesPerSquareMetre() {
        return kilowattHoursPerSquareMetre * 3.6;
    }

    /** This irradiation as a number of the given unit. */
    public double in(IrradiationUnit unit) {
        return unit.definition().scale().fromBase(kilowattHoursPerSquareMetre);
    }

    /** Sum of the two. */
    public Irradiation plus(Irradiation other) {
        return new Irradiation(kilowattHoursPerSquareMetre + other.kilowattHoursPerSquareMetre);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Irradiation minus(Irradiation other) {
        return new Irradiation(kilowattHoursPerSquareMetre - other.kilowattHoursPerSquareMetre);
    }

    /** This many times as much. */
    public Irradiation times(double factor) {
        return new Irradiation(kilowattHoursPerSquareMetre * factor);
    }

    /** This share of it. */
    public Irradiation times(Ratio share) {
        return new Irradiation(kilowattHoursPerSquareMetre * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Irradiation dividedBy(double divisor) {
        return new Irradiation(kilowattHoursPerSquareMetre / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Irradiation other) {
        return Finite.number(
                kilowattHoursPerSquareMetre / other.kilowattHoursPerSquareMetre, "ratio of two irradiation values", "");
    }

    /** Peak sun hours: the time at 1000 W/m² that gathers as much. */
    public TimeSpan peakSunHours() {
        return TimeSpan.hours(kilowattHoursPerSquareMetre);
    }

    @Override
    public double baseValue() {
        return kilowattHoursPerSquareMetre;
    }

    @Override
    public IrradiationUnit baseUnit() {
        return IrradiationUnit.KILOWATT_HOUR_PER_SQUARE_METRE;
    }

    @Override
    public int compareTo(Irradiation other) {
        return Double.compare(kilowattHoursPerSquareMetre, other.kilowattHoursPerSquareMetre);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.IRRADIATION.print(kilowattHoursPerSquareMetre);
    }
}
