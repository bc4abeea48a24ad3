package org.daybank.core.quantity;

/**
 * Mass.
 *
 * @param kilograms the mass in kg, finite and not negative
 */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {

    /** Nothing. */
    public static final Mass ZERO = new Mass(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Mass {
        kilograms = Finite.notNegative(kilograms, "mass", "kg");
    }

    /** Mass in kg. */
    public static Mass kilograms(double kilograms) {
        return new Mass(kilograms);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 kg"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a mass; the message says what would be
     */
    public static Mass parse(CharSequence text) {
        return new Mass(UnitTables.MASS.parse(text));
    }

    /** This mass as a number of the given unit. */
    public double in(MassUnit unit) {
        return unit.definition().scale().fromBase(kilograms);
    }

    /** Sum of the two. */
    public Mass plus(Mass other) {
        return new Mass(kilograms + other.kilograms);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Mass minus(Mass other) {
        return new Mass(kilograms - other.kilograms);
    }

    /** This many times as much. */
    public Mass times(double factor) {
        return new Mass(kilograms * factor);
    }

    /** This share of it. */
    public Mass times(Ratio share) {
        return new Mass(kilograms * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Mass dividedBy(double divisor) {
        return new Mass(kilograms / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Mass other) {
        return Finite.number(kilograms / other.kilograms, "ratio of two mass values", "");
    }

    @Override
    public double baseValue() {
        return kilograms;
    }

    @Override
    public MassUnit baseUnit() {
        return MassUnit.KILOGRAM;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.MASS.print(kilograms);
    }
}
