package org.daybank.core.quantity;

/**
 * A span between two temperatures; one kelvin is as wide as one degree Celsius.
 *
 * @param kelvins the temperature difference in K, any finite number
 */
public record TemperatureDifference(double kelvins) implements Quantity, Comparable<TemperatureDifference> {

    /** Nothing. */
    public static final TemperatureDifference ZERO = new TemperatureDifference(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public TemperatureDifference {
        kelvins = Finite.number(kelvins, "temperature difference", "K");
    }

    /** Temperature difference in K. */
    public static TemperatureDifference kelvins(double kelvins) {
        return new TemperatureDifference(kelvins);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 K"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a temperature difference; the message says what would be
     */
    public static TemperatureDifference parse(CharSequence text) {
        return new TemperatureDifference(UnitTables.TEMPERATURE_DIFFERENCE.parse(text));
    }

    /** This temperature difference as a number of the given unit. */
    public double in(TemperatureDifferenceUnit unit) {
        return unit.definition().scale().fromBase(kelvins);
    }

    /** Sum of the two. */
    public TemperatureDifference plus(TemperatureDifference other) {
        return new TemperatureDifference(kelvins + other.kelvins);
    }

    /** Difference of the two; negative when the other is larger. */
    public TemperatureDifference minus(TemperatureDifference other) {
        return new TemperatureDifference(kelvins - other.kelvins);
    }

    /** This many times as much. */
    public TemperatureDifference times(double factor) {
        return new TemperatureDifference(kelvins * factor);
    }

    /** This share of it. */
    public TemperatureDifference times(Ratio share) {
        return new TemperatureDifference(kelvins * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public TemperatureDifference dividedBy(double divisor) {
        return new TemperatureDifference(kelvins / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(TemperatureDifference other) {
        return Finite.number(kelvins / other.kelvins, "ratio of two temperature difference values", "");
    }

    @Override
    public double baseValue() {
        return kelvins;
    }

    @Override
    public TemperatureDifferenceUnit baseUnit() {
        return TemperatureDifferenceUnit.KELVIN;
    }

    @Override
    public int compareTo(TemperatureDifference other) {
        return Double.compare(kelvins, other.kelvins);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.TEMPERATURE_DIFFERENCE.print(kelvins);
    }
}
