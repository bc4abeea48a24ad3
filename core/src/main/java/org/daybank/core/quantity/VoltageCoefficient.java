package org.daybank.core.quantity;

/**
 * Change of a voltage for each kelvin, as in a charging compensation of −5 mV/°C for each cell.
 *
 * @param voltsPerKelvin the voltage coefficient in V/K, any finite number
 */
public record VoltageCoefficient(double voltsPerKelvin) implements Quantity, Comparable<VoltageCoefficient> {

    /** Nothing. */
    public static final VoltageCoefficient ZERO = new VoltageCoefficient(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public VoltageCoefficient {
        voltsPerKelvin = Finite.number(voltsPerKelvin, "voltage coefficient", "V/K");
    }

    /** Voltage coefficient in V/K. */
    public static VoltageCoefficient voltsPerKelvin(double voltsPerKelvin) {
        return new VoltageCoefficient(voltsPerKelvin);
    }

    /** Voltage coefficient in mV/K. */
    public static VoltageCoefficient millivoltsPerKelvin(double millivoltsPerKelvin) {
        return new VoltageCoefficient(millivoltsPerKelvin / 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 V/K"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a voltage coefficient; the message says what would be
     */
    public static VoltageCoefficient parse(CharSequence text) {
        return new VoltageCoefficient(UnitTables.VOLTAGE_COEFFICIENT.parse(text));
    }

    /** This voltage coefficient in mV/K. */
    public double millivoltsPerKelvin() {
        return voltsPerKelvin * 1000;
    }

    /** This voltage coefficient as a number of the given unit. */
    public double in(VoltageCoefficientUnit unit) {
        return unit.definition().scale().fromBase(voltsPerKelvin);
    }

    /** Sum of the two. */
    public VoltageCoefficient plus(VoltageCoefficient other) {
        return new VoltageCoefficient(voltsPerKelvin + other.voltsPerKelvin);
    }

    /** Difference of the two; negative when the other is larger. */
    public VoltageCoefficient minus(VoltageCoefficient other) {
        return new VoltageCoefficient(voltsPerKelvin - other.voltsPerKelvin);
    }

    /** This many times as much. */
    public VoltageCoefficient times(double factor) {
        return new VoltageCoefficient(voltsPerKelvin * factor);
    }

    /** This share of it. */
    public VoltageCoefficient times(Ratio share) {
        return new VoltageCoefficient(voltsPerKelvin * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public VoltageCoefficient dividedBy(double divisor) {
        return new VoltageCoefficient(voltsPerKelvin / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(VoltageCoefficient other) {
        return Finite.number(voltsPerKelvin / other.voltsPerKelvin, "ratio of two voltage coefficient values", "");
    }

    /** Change of voltage over a temperature difference. */
    public Voltage times(TemperatureDifference difference) {
        return Voltage.volts(voltsPerKelvin * difference.kelvins());
    }

    @Override
    public double baseValue() {
        return voltsPerKelvin;
    }

    @Override
    public VoltageCoefficientUnit baseUnit() {
        return VoltageCoefficientUnit.VOLT_PER_KELVIN;
    }

    @Override
    public int compareTo(VoltageCoefficient other) {
        return Double.compare(voltsPerKelvin, other.voltsPerKelvin);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.VOLTAGE_COEFFICIENT.print(voltsPerKelvin);
    }
}
