package org.daybank.core.quantity;

/**
 * Real (active) power.
 *
 * @param watts the power in W, any finite number
 */
public record Power(double watts) implements Quantity, Comparable<Power> {

    /** Nothing. */
    public static final Power ZERO = new Power(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Power {
        watts = Finite.number(watts, "power", "W");
    }

    /** Power in W. */
    public static Power watts(double watts) {
        return new Power(watts);
    }

    /** Power in kW. */
    public static Power kilowatts(double kilowatts) {
        return new Power(kilowatts * 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 W"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a power; the message says what would be
     */
    public static Power parse(CharSequence text) {
        return new Power(UnitTables.POWER.parse(text));
    }

    /** This power in kW. */
    public double kilowatts() {
        return watts / 1000;
    }

    /** This power as a number of the given unit. */
    public double in(PowerUnit unit) {
        return unit.definition().scale().fromBase(watts);
    }

    /** Sum of the two. */
    public Power plus(Power other) {
        return new Power(watts + other.watts);
    }

    /** Difference of the two; negative when the other is larger. */
    public Power minus(Power other) {
        return new Power(watts - other.watts);
    }

    /** This many times as much. */
    public Power times(double factor) {
        return new Power(watts * factor);
    }

    /** This share of it. */
    public Power times(Ratio share) {
        return new Power(watts * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Power dividedBy(double divisor) {
        return new Power(watts / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Power other) {
        return Finite.number(watts / other.watts, "ratio of two power values", "");
    }

    /** Energy delivered by this power over a time: {@code E = P · t}. */
    public Energy times(TimeSpan time) {
        return Energy.wattHours(watts * time.hours());
    }

    /** Current that carries this power at a voltage: {@code I = P / U}; the voltage must not be zero. */
    public Current dividedBy(Voltage voltage) {
        return Current.amperes(watts / voltage.volts());
    }

    /** Apparent power of a load with this real power: {@code S = P / cos φ}; the power factor must be above zero. */
    public ApparentPower atPowerFactor(Ratio powerFactor) {
        return ApparentPower.voltAmperes(watts / powerFactor.fraction());
    }

    /** The temperature difference across which a heat flow keeps up; the conductance must not be zero. */
    public TemperatureDifference dividedBy(ThermalConductance conductance) {
        return TemperatureDifference.kelvins(watts / conductance.wattsPerKelvin());
    }

    @Override
    public double baseValue() {
        return watts;
    }

    @Override
    public PowerUnit baseUnit() {
        return PowerUnit.WATT;
    }

    @Override
    public int compareTo(Power other) {
        return Double.compare(watts, other.watts);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.POWER.print(watts);
    }
}
