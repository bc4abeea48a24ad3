package org.daybank.core.quantity;

/**
 * A length of time; a day has 24 hours and a year 365 days.
 *
 * @param hours the time span in h, finite and not negative
 */
public record TimeSpan(double hours) implements Quantity, Comparable<TimeSpan> {

    /** Nothing. */
    public static final TimeSpan ZERO = new TimeSpan(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public TimeSpan {
        hours = Finite.notNegative(hours, "time span", "h");
    }

    /** Time span in h. */
    public static TimeSpan hours(double hours) {
        return new TimeSpan(hours);
    }

    /** Time span in s. */
    public static TimeSpan seconds(double seconds) {
        return new TimeSpan(seconds / 3600);
    }

    /** Time span in min. */
    public static TimeSpan minutes(double minutes) {
        return new TimeSpan(minutes / 60);
    }

    /** Time span in d. */
    public static TimeSpan days(double days) {
        return new TimeSpan(days * 24);
    }

    /** Time span in a. */
    public static TimeSpan years(double years) {
        return new TimeSpan(years * 8760);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 h"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a time span; the message says what would be
     */
    public static TimeSpan parse(CharSequence text) {
        return new TimeSpan(UnitTables.TIME_SPAN.parse(text));
    }

    /** This time span in s. */
    public double seconds() {
        return hours * 3600;
    }

    /** This time span in min. */
    public double minutes() {
        return hours * 60;
    }

    /** This time span in d. */
    public double days() {
        return hours / 24;
    }

    /** This time span in a. */
    public double years() {
        return hours / 8760;
    }

    /** This time span as a number of the given unit. */
    public double in(TimeSpanUnit unit) {
        return unit.definition().scale().fromBase(hours);
    }

    /** Sum of the two. */
    public TimeSpan plus(TimeSpan other) {
        return new TimeSpan(hours + other.hours);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public TimeSpan minus(TimeSpan other) {
        return new TimeSpan(hours - other.hours);
    }

    /** This many times as much. */
    public TimeSpan times(double factor) {
        return new TimeSpan(hours * factor);
    }

    /** This share of it. */
    public TimeSpan times(Ratio share) {
        return new TimeSpan(hours * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public TimeSpan dividedBy(double divisor) {
        return new TimeSpan(hours / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(TimeSpan other) {
        return Finite.number(hours / other.hours, "ratio of two time span values", "");
    }

    @Override
    public double baseValue() {
        return hours;
    }

    @Override
    public TimeSpanUnit baseUnit() {
        return TimeSpanUnit.HOUR;
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(hours, other.hours);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.TIME_SPAN.print(hours);
    }
}
