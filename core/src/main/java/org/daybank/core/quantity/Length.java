package org.daybank.core.quantity;

/**
 * Length, distance or height.
 *
 * @param metres the length in m, any finite number
 */
public record Length(double metres) implements Quantity, Comparable<Length> {

    /** Nothing. */
    public static final Length ZERO = new Length(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Length {
        metres = Finite.number(metres, "length", "m");
    }

    /** Length in m. */
    public static Length metres(double metres) {
        return new Length(metres);
    }

    /** Length in mm. */
    public static Length millimetres(double millimetres) {
        return new Length(millimetres / 1000);
    }

    /** Length in ft. */
    public static Length feet(double feet) {
        return new Length(feet * 0.3048);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 m"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a length; the message says what would be
     */
    public static Length parse(CharSequence text) {
        return new Length(UnitTables.LENGTH.parse(text));
    }

    /** This length in mm. */
    public double millimetres() {
        return metres * 1000;
    }

    /** This length in ft. */
    public double feet() {
        return metres / 0.3048;
    }

    /** This length as a number of the given unit. */
    public double in(LengthUnit unit) {
        return unit.definition().scale().fromBase(metres);
    }

    /** Sum of the two. */
    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    /** Difference of the two; negative when the other is larger. */
    public Length minus(Length other) {
        return new Length(metres - other.metres);
    }

    /** This many times as much. */
    public Length times(double factor) {
        return new Length(metres * factor);
    }

    /** This share of it. */
    public Length times(Ratio share) {
        return new Length(metres * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Length dividedBy(double divisor) {
        return new Length(metres / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Length other) {
        return Finite.number(metres / other.metres, "ratio of two length values", "");
    }

    @Override
    public double baseValue() {
        return metres;
    }

    @Override
    public LengthUnit baseUnit() {
        return LengthUnit.METRE;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.LENGTH.print(metres);
    }
}
