package org.daybank.core.quantity;

/**
 * Electric potential difference.
 *
 * @param volts the voltage in V, any finite number
 */
public record Voltage(double volts) implements Quantity, Comparable<Voltage> {

    /** Nothing. */
    public static final Voltage ZERO = new Voltage(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Voltage {
        volts = Finite.number(volts, "voltage", "V");
    }

    /** Voltage in V. */
    public static Voltage volts(double volts) {
        return new Voltage(volts);
    }

    /** Voltage in mV. */
    public static Voltage millivolts(double millivolts) {
        return new Voltage(millivolts / 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 V"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a voltage; the message says what would be
     */
    public static Voltage parse(CharSequence text) {
        return new Voltage(UnitTables.VOLTAGE.parse(text));
    }

    /** This voltage in mV. */
    public double millivolts() {
        return volts * 1000;
    }

    /** This voltage as a number of the given unit. */
    public double in(VoltageUnit unit) {
        return unit.definition().scale().fromBase(volts);
    }

    /** Sum of the two. */
    public Voltage plus(Voltage other) {
        return new Voltage(volts + other.volts);
    }

    /** Difference of the two; negative when the other is larger. */
    public Voltage minus(Voltage other) {
        return new Voltage(volts - other.volts);
    }

    /** This many times as much. */
    public Voltage times(double factor) {
        return new Voltage(volts * factor);
    }

    /** This share of it. */
    public Voltage times(Ratio share) {
        return new Voltage(volts * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Voltage dividedBy(double divisor) {
        return new Voltage(volts / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Voltage other) {
        return Finite.number(volts / other.volts, "ratio of two voltage values", "");
    }

    /** Power at a current: {@code P = U · I}. */
    public Power times(Current current) {
        return Power.watts(volts * current.amperes());
    }

    /** Current through a resistance, Ohm's law: {@code I = U / R}; the resistance must not be zero. */
    public Current dividedBy(Resistance resistance) {
        return Current.amperes(volts / resistance.ohms());
    }

    /** Resistance across which a current drops this voltage: {@code R = U / I}; the current must not be zero. */
    public Resistance dividedBy(Current current) {
        return Resistance.ohms(volts / current.amperes());
    }

    @Override
    public double baseValue() {
        return volts;
    }

    @Override
    public VoltageUnit baseUnit() {
        return VoltageUnit.VOLT;
    }

    @Override
    public int compareTo(Voltage other) {
        return Double.compare(volts, other.volts);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.VOLTAGE.print(volts);
    }
}
