package org.daybank.core.quantity;

/**
 * Frequency of an alternating current.
 *
 * @param hertz the frequency in Hz, finite and not negative
 */
public record Frequency(double hertz) implements Quantity, Comparable<Frequency> {

    /** Nothing. */
    public static final Frequency ZERO = new Frequency(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Frequency {
        hertz = Finite.notNegative(hertz, "frequency", "Hz");
    }

    /** Frequency in Hz. */
    public static Frequency hertz(double hertz) {
        return new Frequency(hertz);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 Hz"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a frequency; the message says what would be
     */
    public static Frequency parse(CharSequence text) {
        return new Frequency(UnitTables.FREQUENCY.parse(text));
    }

    /** This frequency as a number of the given unit. */
    public double in(FrequencyUnit unit) {
        return unit.definition().scale().fromBase(hertz);
    }

    /** Sum of the two. */
    public Frequency plus(Frequency other) {
        return new Frequency(hertz + other.hertz);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Frequency minus(Frequency other) {
        return new Frequency(hertz - other.hertz);
    }

    /** This many times as much. */
    public Frequency times(double factor) {
        return new Frequency(hertz * factor);
    }

    /** This share of it. */
    public Frequency times(Ratio share) {
        return new Frequency(hertz * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Frequency dividedBy(double divisor) {
        return new Frequency(hertz / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Frequency other) {
        return Finite.number(hertz / other.hertz, "ratio of two frequency values", "");
    }

    @Override
    public double baseValue() {
        return hertz;
    }

    @Override
    public FrequencyUnit baseUnit() {
        return FrequencyUnit.HERTZ;
    }

    @Override
    public int compareTo(Frequency other) {
        return Double.compare(hertz, other.hertz);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.FREQUENCY.print(hertz);
    }
}
