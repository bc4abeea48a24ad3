package org.daybank.core.quantity;

/**
 * Relative change of a data-sheet figure for each kelvin, as in −0.28 %/°C.
 *
 * @param perKelvin the temperature coefficient in 1/K, any finite number
 */
public record TemperatureCoefficient(double perKelvin) implements Quantity, Comparable<TemperatureCoefficient> {

    /** Nothing. */
    public static final TemperatureCoefficient ZERO = new TemperatureCoefficient(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public TemperatureCoefficient {
        perKelvin = Finite.number(perKelvin, "temperature coefficient", "1/K");
    }

    /** Temperature coefficient in 1/K. */
    public static TemperatureCoefficient perKelvin(double perKelvin) {
        return new TemperatureCoefficient(perKelvin);
    }

    /** Temperature coefficient in %/K. */
    public static TemperatureCoefficient percentPerKelvin(double percentPerKelvin) {
        return new TemperatureCoefficient(percentPerKelvin / 100);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 1/K"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a temperature coefficient; the message says what would be
     */
    public static TemperatureCoefficient parse(CharSequence text) {
        return new TemperatureCoefficient(UnitTables.TEMPERATURE_COEFFICIENT.parse(text));
    }

    /** This temperature coefficient in %/K. */
    public double percentPerKelvin() {
        return perKelvin * 100;
    }

    /** This temperature coefficient as a number of the given unit. */
    public double in(TemperatureCoefficientUnit unit) {
        return unit.definition().scale().fromBase(perKelvin);
    }

    /** Sum of the two. */
    public TemperatureCoefficient plus(TemperatureCoefficient other) {
        return new TemperatureCoefficient(perKelvin + other.perKelvin);
    }

    /** Difference of the two; negative when the other is larger. */
    public TemperatureCoefficient minus(TemperatureCoefficient other) {
        return new TemperatureCoefficient(perKelvin - other.perKelvin);
    }

    /** This many times as much. */
    public TemperatureCoefficient times(double factor) {
        return new TemperatureCoefficient(perKelvin * factor);
    }

    /** This share of it. */
    public TemperatureCoefficient times(Ratio share) {
        return new TemperatureCoefficient(perKelvin * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public TemperatureCoefficient dividedBy(double divisor) {
        return new TemperatureCoefficient(perKelvin / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(TemperatureCoefficient other) {
        return Finite.number(perKelvin / other.perKelvin, "ratio of two temperature coefficient values", "");
    }

    /** Relative change over a temperature difference. */
    public Ratio times(TemperatureDifference difference) {
        return Ratio.of(perKelvin * difference.kelvins());
    }

    @Override
    public double baseValue() {
        return perKelvin;
    }

    @Override
    public TemperatureCoefficientUnit baseUnit() {
        return TemperatureCoefficientUnit.PER_KELVIN;
    }

    @Override
    public int compareTo(TemperatureCoefficient other) {
        return Double.compare(perKelvin, other.perKelvin);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.TEMPERATURE_COEFFICIENT.print(perKelvin);
    }
}
