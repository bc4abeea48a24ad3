package org.daybank.core.quantity;

/**
 * Electrical resistance.
 *
 * @param ohms the resistance in Ω, finite and not negative
 */
public record Resistance(double ohms) implements Quantity, Comparable<Resistance> {

    /** Nothing. */
    public static final Resistance ZERO = new Resistance(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Resistance {
        ohms = Finite.notNegative(ohms, "resistance", "Ω");
    }

    /** Resistance in Ω. */
    public static Resistance ohms(double ohms) {
        return new Resistance(ohms);
    }

    /** Resistance in mΩ. */
    public static Resistance milliohms(double milliohms) {
        return new Resistance(milliohms / 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 Ω"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a resistance; the message says what would be
     */
    public static Resistance parse(CharSequence text) {
        return new Resistance(UnitTables.RESISTANCE.parse(text));
    }

    /** This resistance in mΩ. */
    public double milliohms() {
        return ohms * 1000;
    }

    /** This resistance as a number of the given unit. */
    public double in(ResistanceUnit unit) {
        return unit.definition().scale().fromBase(ohms);
    }

    /** Sum of the two. */
    public Resistance plus(Resistance other) {
        return new Resistance(ohms + other.ohms);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Resistance minus(Resistance other) {
        return new Resistance(ohms - other.ohms);
    }

    /** This many times as much. */
    public Resistance times(double factor) {
        return new Resistance(ohms * factor);
    }

    /** This share of it. */
    public Resistance times(Ratio share) {
        return new Resistance(ohms * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Resistance dividedBy(double divisor) {
        return new Resistance(ohms / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Resistance other) {
        return Finite.number(ohms / other.ohms, "ratio of two resistance values", "");
    }

    @Override
    public double baseValue() {
        return ohms;
    }

    @Override
    public ResistanceUnit baseUnit() {
        return ResistanceUnit.OHM;
    }

    @Override
    public int compareTo(Resistance other) {
        return Double.compare(ohms, other.ohms);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.RESISTANCE.print(ohms);
    }
}
