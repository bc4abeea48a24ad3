package org.daybank.core.quantity;

/**
 * Speed, of wind for the most part.
 *
 * @param metresPerSecond the speed in m/s, finite and not negative
 */
public record Speed(double metresPerSecond) implements Quantity, Comparable<Speed> {

    /** Nothing. */
    public static final Speed ZERO = new Speed(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Speed {
        metresPerSecond = Finite.notNegative(metresPerSecond, "speed", "m/s");
    }

    /** Speed in m/s. */
    public static Speed metresPerSecond(double metresPerSecond) {
        return new Speed(metresPerSecond);
    }

    /** Speed in km/h. */
    public static Speed kilometresPerHour(double kilometresPerHour) {
        return new Speed(kilometresPerHour / 3.6);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 m/s"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a speed; the message says what would be
     */
    public static Speed parse(CharSequence text) {
        return new Speed(UnitTables.SPEED.parse(text));
    }

    /** This speed in km/h. */
    public double kilometresPerHour() {
        return metresPerSecond * 3.6;
    }

    /** This speed as a number of the given unit. */
    public double in(SpeedUnit unit) {
        return unit.definition().scale().fromBase(metresPerSecond);
    }

    /** Sum of the two. */
    public Speed plus(Speed other) {
        return new Speed(metresPerSecond + other.metresPerSecond);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Speed minus(Speed other) {
        return new Speed(metresPerSecond - other.metresPerSecond);
    }

    /** This many times as much. */
    public Speed times(double factor) {
        return new Speed(metresPerSecond * factor);
    }

    /** This share of it. */
    public Speed times(Ratio share) {
        return new Speed(metresPerSecond * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Speed dividedBy(double divisor) {
        return new Speed(metresPerSecond / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Speed other) {
        return Finite.number(metresPerSecond / other.metresPerSecond, "ratio of two speed values", "");
    }

    @Override
    public double baseValue() {
        return metresPerSecond;
    }

    @Override
    public SpeedUnit baseUnit() {
        return SpeedUnit.METRE_PER_SECOND;
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.SPEED.print(metresPerSecond);
    }
}
