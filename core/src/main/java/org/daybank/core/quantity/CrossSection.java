package org.daybank.core.quantity;

/**
 * Area of a conductor or of an opening.
 *
 * @param squareMillimetres the cross-section in mm², finite and not negative
 */
public record CrossSection(double squareMillimetres) implements Quantity, Comparable<CrossSection> {

    /** Nothing. */
    public static final CrossSection ZERO = new CrossSection(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public CrossSection {
        squareMillimetres = Finite.notNegative(squareMillimetres, "cross-section", "mm²");
    }

    /** Cross-section in mm². */
    public static CrossSection squareMillimetres(double squareMillimetres) {
        return new CrossSection(squareMillimetres);
    }

    /** Cross-section in cm². */
    public static CrossSection squareCentimetres(double squareCentimetres) {
        return new CrossSection(squareCentimetres * 100);
    }

    /** Cross-section in m². */
    public static CrossSection squareMetres(double squareMetres) {
        return new CrossSection(squareMetres * 1000000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 mm²"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a cross-section; the message says what would be
     */
    public static CrossSection parse(CharSequence text) {
        return new CrossSection(UnitTables.CROSS_SECTION.parse(text));
    }

    /** This cross-section in cm². */
    public double squareCentimetres() {
        return squareMillimetres / 100;
    }

    /** This cross-section in m². */
    public double squareMetres() {
        return squareMillimetres / 1000000;
    }

    /** This cross-section as a number of the given unit. */
    public double in(CrossSectionUnit unit) {
        return unit.definition().scale().fromBase(squareMillimetres);
    }

    /** Sum of the two. */
    public CrossSection plus(CrossSection other) {
        return new CrossSection(squareMillimetres + other.squareMillimetres);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public CrossSection minus(CrossSection other) {
        return new CrossSection(squareMillimetres - other.squareMillimetres);
    }

    /** This many times as much. */
    public CrossSection times(double factor) {
        return new CrossSection(squareMillimetres * factor);
    }

    /** This share of it. */
    public CrossSection times(Ratio share) {
        return new CrossSection(squareMillimetres * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public CrossSection dividedBy(double divisor) {
        return new CrossSection(squareMillimetres / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(CrossSection other) {
        return Finite.number(squareMillimetres / other.squareMillimetres, "ratio of two cross-section values", "");
    }

    @Override
    public double baseValue() {
        return squareMillimetres;
    }

    @Override
    public CrossSectionUnit baseUnit() {
        return CrossSectionUnit.SQUARE_MILLIMETRE;
    }

    @Override
    public int compareTo(CrossSection other) {
        return Double.compare(squareMillimetres, other.squareMillimetres);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.CROSS_SECTION.print(squareMillimetres);
    }
}
