package org.daybank.core.quantity;

/**
 * Electric current.
 *
 * @param amperes the current in A, any finite number
 */
public record Current(double amperes) implements Quantity, Comparable<Current> {

    /** Nothing. */
    public static final Current ZERO = new Current(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Current {
        amperes = Finite.number(amperes, "current", "A");
    }

    /** Current in A. */
    public static Current amperes(double amperes) {
        return new Current(amperes);
    }

    /** Current in mA. */
    public static Current milliamperes(double milliamperes) {
        return new Current(milliamperes / 1000);
    }

    /** Current in kA. */
    public static Current kiloamperes(double kiloamperes) {
        return new Current(kiloamperes * 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 A"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a current; the message says what would be
     */
    public static Current parse(CharSequence text) {
        return new Current(UnitTables.CURRENT.parse(text));
    }

    /** This current in mA. */
    public double milliamperes() {
        return amperes * 1000;
    }

    /** This current in kA. */
    public double kiloamperes() {
        return amperes / 1000;
    }

    /** This current as a number of the given unit. */
    public double in(CurrentUnit unit) {
        return unit.definition().scale().fromBase(amperes);
    }

    /** Sum of the two. */
    public Current plus(Current other) {
        return new Current(amperes + other.amperes);
    }

    /** Difference of the two; negative when the other is larger. */
    public Current minus(Current other) {
        return new Current(amperes - other.amperes);
    }

    /** This many times as much. */
    public Current times(double factor) {
        return new Current(amperes * factor);
    }

    /** This share of it. */
    public Current times(Ratio share) {
        return new Current(amperes * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Current dividedBy(double divisor) {
        return new Current(amperes / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Current other) {
        return Finite.number(amperes / other.amperes, "ratio of two current values", "");
    }

    /** Voltage dropped across a resistance, Ohm's law: {@code U = I · R}. */
    public Voltage times(Resistance resistance) {
        return Voltage.volts(amperes * resistance.ohms());
    }

    /** Power at a voltage: {@code P = U · I}. */
    public Power times(Voltage voltage) {
        return Power.watts(amperes * voltage.volts());
    }

    /** Charge carried over a time: {@code Q = I · t}. */
    public Charge times(TimeSpan time) {
        return Charge.ampereHours(amperes * time.hours());
    }

    @Override
    public double baseValue() {
        return amperes;
    }

    @Override
    public CurrentUnit baseUnit() {
        return CurrentUnit.AMPERE;
    }

    @Override
    public int compareTo(Current other) {
        return Double.compare(amperes, other.amperes);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.CURRENT.print(amperes);
    }
}
