package org.daybank.core.quantity;

/**
 * Geographic latitude in decimal degrees, positive to the north.
 *
 * @param degrees from −90 to 90
 */
public record Latitude(double degrees) implements Comparable<Latitude> {

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not from −90 to 90
     */
    public Latitude {
        degrees = Finite.within(90, degrees, "latitude");
    }

    /** The latitude of so many decimal degrees. */
    public static Latitude degrees(double degrees) {
        return new Latitude(degrees);
    }

    /**
     * Reads decimal degrees, with or without a unit: {@code "-12.5"}, {@code "-12.5 deg"}.
     *
     * @throws QuantityFormatException when the text is not a number of degrees
     */
    public static Latitude parse(CharSequence text) {
        return new Latitude(Decimals.degrees(text, "latitude"));
    }

    /** The latitude in radians. */
    public double radians() {
        return Math.toRadians(degrees);
    }

    @Override
    public int compareTo(Latitude other) {
        return Double.compare(degrees, other.degrees);
    }

    /** Decimal degrees, which {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return Decimals.shortest(degrees) + "°";
    }
}
