package org.daybank.core.quantity;

/**
 * Flow of air for the most part.
 *
 * @param cubicMetresPerHour the volume flow in m³/h, finite and not negative
 */
public record VolumeFlow(double cubicMetresPerHour) implements Quantity, Comparable<VolumeFlow> {

    /** Nothing. */
    public static final VolumeFlow ZERO = new VolumeFlow(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public VolumeFlow {
        cubicMetresPerHour = Finite.notNegative(cubicMetresPerHour, "volume flow", "m³/h");
    }

    /** Volume flow in m³/h. */
    public static VolumeFlow cubicMetresPerHour(double cubicMetresPerHour) {
        return new VolumeFlow(cubicMetresPerHour);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 m³/h"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a volume flow; the message says what would be
     */
    public static VolumeFlow parse(CharSequence text) {
        return new VolumeFlow(UnitTables.VOLUME_FLOW.parse(text));
    }

    /** This volume flow as a number of the given unit. */
    public double in(VolumeFlowUnit unit) {
        return unit.definition().scale().fromBase(cubicMetresPerHour);
    }

    /** Sum of the two. */
    public VolumeFlow plus(VolumeFlow other) {
        return new VolumeFlow(cubicMetresPerHour + other.cubicMetresPerHour);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public VolumeFlow minus(VolumeFlow other) {
        return new VolumeFlow(cubicMetresPerHour - other.cubicMetresPerHour);
    }

    /** This many times as much. */
    public VolumeFlow times(double factor) {
        return new VolumeFlow(cubicMetresPerHour * factor);
    }

    /** This share of it. */
    public VolumeFlow times(Ratio share) {
        return new VolumeFlow(cubicMetresPerHour * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public VolumeFlow dividedBy(double divisor) {
        return new VolumeFlow(cubicMetresPerHour / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(VolumeFlow other) {
        return Finite.number(cubicMetresPerHour / other.cubicMetresPerHour, "ratio of two volume flow values", "");
    }

    @Override
    public double baseValue() {
        return cubicMetresPerHour;
    }

    @Override
    public VolumeFlowUnit baseUnit() {
        return VolumeFlowUnit.CUBIC_METRE_PER_HOUR;
    }

    @Override
    public int compareTo(VolumeFlow other) {
        return Double.compare(cubicMetresPerHour, other.cubicMetresPerHour);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.VOLUME_FLOW.print(cubicMetresPerHour);
    }
}
