package org.daybank.core.quantity;

/**
 * Heat lost through an enclosure for each kelvin between inside and outside (UA).
 *
 * @param wattsPerKelvin the thermal conductance in W/K, finite and not negative
 */
public record ThermalConductance(double wattsPerKelvin) implements Quantity, Comparable<ThermalConductance> {

    /** Nothing. */
    public static final ThermalConductance ZERO = new ThermalConductance(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite and not negative
     */
    public ThermalConductance {
        wattsPerKelvin = Finite.notNegative(wattsPerKelvin, "thermal conductance", "W/K");
    }

    /** Thermal conductance in W/K. */
    public static ThermalConductance wattsPerKelvin(double wattsPerKelvin) {
        return new ThermalConductance(wattsPerKelvin);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 W/K"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a thermal conductance; the message says what would be
     */
    public static ThermalConductance parse(CharSequence text) {
        return new ThermalConductance(UnitTables.THERMAL_CONDUCTANCE.parse(text));
    }

    /** This thermal conductance as a number of the given unit. */
    public double in(ThermalConductanceUnit unit) {
        return unit.definition().scale().fromBase(wattsPerKelvin);
    }

    /** Sum of the two. */
    public ThermalConductance plus(ThermalConductance other) {
        return new ThermalConductance(wattsPerKelvin + other.wattsPerKelvin);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public ThermalConductance minus(ThermalConductance other) {
        return new ThermalConductance(wattsPerKelvin - other.wattsPerKelvin);
    }

    /** This many times as much. */
    public ThermalConductance times(double factor) {
        return new ThermalConductance(wattsPerKelvin * factor);
    }

    /** This share of it. */
    public ThermalConductance times(Ratio share) {
        return new ThermalConductance(wattsPerKelvin * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public ThermalConductance dividedBy(double divisor) {
        return new ThermalConductance(wattsPerKelvin / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(ThermalConductance other) {
        return Finite.number(wattsPerKelvin / other.wattsPerKelvin, "ratio of two thermal conductance values", "");
    }

    /** Heat flow across a temperature difference. */
    public Power times(TemperatureDifference difference) {
        return Power.watts(wattsPerKelvin * difference.kelvins());
    }

    @Override
    public double baseValue() {
        return wattsPerKelvin;
    }

    @Override
    public ThermalConductanceUnit baseUnit() {
        return ThermalConductanceUnit.WATT_PER_KELVIN;
    }

    @Override
    public int compareTo(ThermalConductance other) {
        return Double.compare(wattsPerKelvin, other.wattsPerKelvin);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.THERMAL_CONDUCTANCE.print(wattsPerKelvin);
    }
}
