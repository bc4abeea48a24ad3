package org.daybank.core.quantity;

/**
 * Plane angle, in degrees.
 *
 * @param degrees the angle in °, any finite number
 */
public record Angle(double degrees) implements Quantity, Comparable<Angle> {

    /** Nothing. */
    public static final Angle ZERO = new Angle(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Angle {
        degrees = Finite.number(degrees, "angle", "°");
    }

    /** Angle in °. */
    public static Angle degrees(double degrees) {
        return new Angle(degrees);
    }

    /** Angle in rad. */
    public static Angle radians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 °"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not an angle; the message says what would be
     */
    public static Angle parse(CharSequence text) {
        return new Angle(UnitTables.ANGLE.parse(text));
    }

    /** This angle in rad. */
    public double radians() {
        return Math.toRadians(degrees);
    }

    /** This angle as a number of the given unit. */
    public double in(AngleUnit unit) {
        return unit.definition().scale().fromBase(degrees);
    }

    /** Sum of the two. */
    public Angle plus(Angle other) {
        return new Angle(degrees + other.degrees);
    }

    /** Difference of the two; negative when the other is larger. */
    public Angle minus(Angle other) {
        return new Angle(degrees - other.degrees);
    }

    /** This many times as much. */
    public Angle times(double factor) {
        return new Angle(degrees * factor);
    }

    /** This share of it. */
    public Angle times(Ratio share) {
        return new Angle(degrees * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Angle dividedBy(double divisor) {
        return new Angle(degrees / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Angle other) {
        return Finite.number(degrees / other.degrees, "ratio of two angle values", "");
    }

    /** Sine of the angle. */
    public double sine() {
        return Math.sin(radians());
    }

    /** Cosine of the angle. */
    public double cosine() {
        return Math.cos(radians());
    }

    @Override
    public double baseValue() {
        return degrees;
    }

    @Override
    public AngleUnit baseUnit() {
        return AngleUnit.DEGREE;
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.ANGLE.print(degrees);
    }
}
