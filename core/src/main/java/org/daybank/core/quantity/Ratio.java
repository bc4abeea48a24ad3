package org.daybank.core.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;

/**
 * A share or a factor without dimension, where a percentage is a natural way to say it: an efficiency, a depth of
 * discharge, a margin.
 *
 * @param fraction the number, any finite one: 0.8 for 80 %; where a ratio is used its bounds are checked
 */
public record Ratio(double fraction) implements Comparable<Ratio> {
    /** Nothing of it. */
    public static final Ratio ZERO = new Ratio(0);

    /** All of it. */
    public static final Ratio ONE = new Ratio(1);

    private static final Scale PERCENT = Scale.of("1", "100");

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Ratio {
        fraction = Finite.number(fraction, "ratio", "");
    }

    /** The ratio of this number: {@code Ratio.of(0.8)} is 80 %. */
    public static Ratio of(double fraction) {
        return new Ratio(fraction);
    }

    /** So many hundredths. */
    public static Ratio percent(double percent) {
        return new Ratio(percent / 100);
    }

    /**
     * Reads a number, or a percentage with its sign: {@code "0.8"}, {@code "80 %"}.
     *
     * @throws QuantityFormatException when the text is neither
     */
    public static Ratio parse(CharSequence text) {
        String trimmed = Decimals.tidied(text);
        Matcher number = Decimals.NUMBER.matcher(trimmed);
        if (number.lookingAt() && Decimals.excess(number).isEmpty()) {
            BigDecimal decimal = new BigDecimal(number.group());
            String rest = trimmed.substring(number.end()).strip();
            double fraction = rest.equals("%") ? PERCENT.toBase(decimal) : decimal.doubleValue();
            if ((rest.isEmpty() || rest.equals("%")) && Double.isFinite(fraction)) {
                return new Ratio(fraction);
            }
        }
        throw new QuantityFormatException(
                text,
                "'%s' is not a ratio: %swrite a number or a percentage, as in '0.8' or '80 %%'"
                        .formatted(QuantityFormatException.shown(text), Decimals.commaHint(text)));
    }

    /** This ratio in hundredths. */
    public double percent() {
        return fraction * 100;
    }

    /** One on top of it: the factor that adds this margin. */
    public double onePlus() {
        return 1 + fraction;
    }

    /** What is left of one. */
    public Ratio complement() {
        return new Ratio(1 - fraction);
    }

    /** Product of the two. */
    public Ratio times(Ratio other) {
        return new Ratio(fraction * other.fraction);
    }

    /** Percentage to three significant digits, for a sentence. */
    public String rounded() {
        return Decimals.rounded(percent(), 3) + " %";
    }

    /** The number itself to so many significant digits, for a sentence. */
    public String significant(int digits) {
        return Decimals.rounded(fraction, digits);
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(fraction, other.fraction);
    }

    /** The number, which {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return Decimals.shortest(fraction);
    }
}
