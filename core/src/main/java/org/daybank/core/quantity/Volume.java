package org.daybank.core.quantity;

/**
 * Volume.
 *
 * @param litres the volume in L, finite and not negative
 */
public record Volume(double litres) implements Quantity, Comparable<Volume> {

    /** Nothing. */
    public static final Volume ZERO = new Volume(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public Volume {
        litres = Finite.notNegative(litres, "volume", "L");
    }

    /** Volume in L. */
    public static Volume litres(double litres) {
        return new Volume(litres);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 L"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a volume; the message says what would be
     */
    public static Volume parse(CharSequence text) {
        return new Volume(UnitTables.VOLUME.parse(text));
    }

    /** This volume as a number of the given unit. */
    public double in(VolumeUnit unit) {
        return unit.definition().scale().fromBase(litres);
    }

    /** Sum of the two. */
    public Volume plus(Volume other) {
        return new Volume(litres + other.litres);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public Volume minus(Volume other) {
        return new Volume(litres - other.litres);
    }

    /** This many times as much. */
    public Volume times(double factor) {
        return new Volume(litres * factor);
    }

    /** This share of it. */
    public Volume times(Ratio share) {
        return new Volume(litres * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public Volume dividedBy(double divisor) {
        return new Volume(litres / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(Volume other) {
        return Finite.number(litres / other.litres, "ratio of two volume values", "");
    }

    @Override
    public double baseValue() {
        return litres;
    }

    @Override
    public VolumeUnit baseUnit() {
        return VolumeUnit.LITRE;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(litres, other.litres);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.VOLUME.print(litres);
    }
}
