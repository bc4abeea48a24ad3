package org.daybank.core.quantity;

/**
 * Geographic longitude in decimal degrees, positive to the east.
 *
 * @param degrees from −180 to 180
 */
public record Longitude(double degrees) implements Comparable<Longitude> {

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not from −180 to 180
     */
    public Longitude {
        degrees = Finite.within(180, degrees, "longitude");
    }

    /** The longitude of so many decimal degrees. */
    public static Longitude degrees(double degrees) {
        return new Longitude(degrees);
    }

    /**
     * Reads decimal degrees, with or without a unit: {@code "-12.5"}, {@code "-12.5 deg"}.
     *
     * @throws QuantityFormatException when the text is not a number of degrees
     */
    public static Longitude parse(CharSequence text) {
        return new Longitude(Decimals.degrees(text, "longitude"));
    }

    /** The longitude in radians. */
    public double radians() {
        return Math.toRadians(degrees);
    }

    @Override
    public int compareTo(Longitude other) {
        return Double.compare(degrees, other.degrees);
    }

    /** Decimal degrees, which {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return Decimals.shortest(degrees) + "°";
    }
}
