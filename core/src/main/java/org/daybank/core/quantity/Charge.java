package org.daybank.core.quantity;

/**
 * Electric charge, in ampere-hours as batteries are rated.
 *
 * @param ampereHours the charge in Ah, any finite number
 */
public record Charge(double ampereHours) implements Quantity, Comparable<Charge> {

    /** Nothing. */
    public static final Charge ZERO = new Charge(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Charge {
        ampereHours = Finite.number(ampereHours, "charge", "Ah");
    }

    /** Charge in Ah. */
    public static Charge ampereHours(double ampereHours) {
        return new Charge(ampereHours);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 Ah"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a charge; the message says what would be
     */
    public static Charge parse(CharSequence text) {
        return new Charge(UnitTables.CHARGE.parse(text));
    }

    /** This charge as a number of the given unit. */
    public double in(ChargeUnit unit) {
        return unit.definition().scale().fromBase(ampereHours);
    }

    /** Sum of the two. */
    public Charge plus(Charge other) {
        return new Charge(ampereHours + other.ampereHours);
    }

    /** Difference of the two; negative when the other is larger. */
    public Charge minus(Charge other) {
        return new Charge(ampereHours - other.ampereHours);
    }

    /** This many times as much. */
    public Charge times(double factor) {
        return new Charge(ampereHours * factor);
    }

    /** This share of it. */
    public Charge times(Ratio share) {
        return new Charge(ampereHours * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Charge dividedBy(double divisor) {
        return new Charge(ampereHours / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Charge other) {
        return Finite.number(ampereHours / other.ampereHours, "ratio of two charge values", "");
    }

    /** Energy of this charge at a voltage: {@code E = Q · U}. */
    public Energy times(Voltage voltage) {
        return Energy.wattHours(ampereHours * voltage.volts());
    }

    /** Mean current when this charge flows over a time: {@code I = Q / t}; the time must not be zero. */
    public Current dividedBy(TimeSpan time) {
        return Current.amperes(ampereHours / time.hours());
    }

    /** Time in which a current carries this charge: {@code t = Q / I}; the current must not be zero. */
    public TimeSpan dividedBy(Current current) {
        return TimeSpan.hours(ampereHours / current.amperes());
    }

    @Override
    public double baseValue() {
        return ampereHours;
    }

    @Override
    public ChargeUnit baseUnit() {
        return ChargeUnit.AMPERE_HOUR;
    }

    @Override
    public int compareTo(Charge other) {
        return Double.compare(ampereHours, other.ampereHours);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.CHARGE.print(ampereHours);
    }
}
