package org.daybank.core.quantity;

/**
 * Electrical energy, in watt-hours as the trade counts it.
 *
 * @param wattHours the energy in Wh, any finite number
 */
public record Energy(double wattHours) implements Quantity, Comparable<Energy> {

    /** Nothing. */
    public static final Energy ZERO = new Energy(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Energy {
        wattHours = Finite.number(wattHours, "energy", "Wh");
    }

    /** Energy in Wh. */
    public static Energy wattHours(double wattHours) {
        return new Energy(wattHours);
    }

    /** Energy in kWh. */
    public static Energy kilowattHours(double kilowattHours) {
        return new Energy(kilowattHours * 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 Wh"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not an energy; the message says what would be
     */
    public static Energy parse(CharSequence text) {
        return new Energy(UnitTables.ENERGY.parse(text));
    }

    /** This energy in kWh. */
    public double kilowattHours() {
        return wattHours / 1000;
    }

    /** This energy as a number of the given unit. */
    public double in(EnergyUnit unit) {
        return unit.definition().scale().fromBase(wattHours);
    }

    /** Sum of the two. */
    public Energy plus(Energy other) {
        return new Energy(wattHours + other.wattHours);
    }

    /** Difference of the two; negative when the other is larger. */
    public Energy minus(Energy other) {
        return new Energy(wattHours - other.wattHours);
    }

    /** This many times as much. */
    public Energy times(double factor) {
        return new Energy(wattHours * factor);
    }

    /** This share of it. */
    public Energy times(Ratio share) {
        return new Energy(wattHours * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Energy dividedBy(double divisor) {
        return new Energy(wattHours / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Energy other) {
        return Finite.number(wattHours / other.wattHours, "ratio of two energy values", "");
    }

    /** Charge that holds this energy at a voltage: {@code Q = E / U}; the voltage must not be zero. */
    public Charge dividedBy(Voltage voltage) {
        return Charge.ampereHours(wattHours / voltage.volts());
    }

    /** Mean power when this energy flows over a time: {@code P = E / t}; the time must not be zero. */
    public Power dividedBy(TimeSpan time) {
        return Power.watts(wattHours / time.hours());
    }

    /** Time in which a power delivers this energy: {@code t = E / P}; the power must not be zero. */
    public TimeSpan dividedBy(Power power) {
        return TimeSpan.hours(wattHours / power.watts());
    }

    @Override
    public double baseValue() {
        return wattHours;
    }

    @Override
    public EnergyUnit baseUnit() {
        return EnergyUnit.WATT_HOUR;
    }

    @Override
    public int compareTo(Energy other) {
        return Double.compare(wattHours, other.wattHours);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.ENERGY.print(wattHours);
    }
}
