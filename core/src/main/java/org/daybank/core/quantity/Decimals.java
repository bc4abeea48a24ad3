package org.daybank.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Decimal text and numbers, in no locale: the decimal sign is a point. */
final class Decimals {
    /** Longest number text that is read; more digits than any measurement has. */
    static final int MAX_LENGTH = 60;

    /** A decimal number as people, spreadsheets and JSON write it; {@link #excess} is asked before it is read. */
    static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?(\\d+))?");

    private static final int MAX_EXPONENT_DIGITS = 3;
    private static final int MOST_NEAR_DIGITS = 6;
    private static final double NEAR_MIDDLE = 1e-6;

    private Decimals() {}

    /** The text with plain spaces around and within, and the minus sign of a keyboard. */
    static String tidied(CharSequence text) {
        return text.toString()
                .replace('−', '-')
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .strip();
    }

    /** Why a matched {@link #NUMBER} is not read, so that nothing explodes: more of it than any measurement has. */
    static Optional<String> excess(Matcher number) {
        if (number.end() > MAX_LENGTH) {
            return Optional.of("the number has more than " + MAX_LENGTH + " characters");
        }
        String exponent = number.group(1);
        return exponent != null && exponent.length() > MAX_EXPONENT_DIGITS
                ? Optional.of("the exponent has more than " + MAX_EXPONENT_DIGITS + " digits")
                : Optional.empty();
    }

    /** Text that reads back to exactly this number, without an exponent where a person would write none. */
    static String shortest(double number) {
        return plain(new BigDecimal(Double.toString(number)));
    }

    /** Text of this number to so many significant digits, for reading. */
    static String rounded(double number, int significantDigits) {
        return plain(near(number, significantDigits)
                .orElseGet(() -> new BigDecimal(number).round(new MathContext(significantDigits))));
    }

    /**
     * A number of everyday size to so many significant digits by floating point, which is several times faster than decimal
     * arithmetic; nothing where it lies so near the middle between two that floating point might take the wrong one.
     */
    static Optional<BigDecimal> near(double number, int significantDigits) {
        double size = Math.abs(number);
        if (!(size >= 0.001 && size < 1e6) || significantDigits > MOST_NEAR_DIGITS) {
            return Optional.empty();
        }
        int decimals = significantDigits - 1 - (int) Math.floor(Math.log10(size));
        double scaled = decimals < 0 ? number / Math.pow(10, -decimals) : number * Math.pow(10, decimals);
        double whole = Math.rint(scaled);
        return Math.abs(Math.abs(scaled - whole) - 0.5) < NEAR_MIDDLE
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf((long) whole, decimals));
    }

    /** Reads decimal degrees, with or without their unit. */
    static double degrees(CharSequence text, String noun) {
        String trimmed = tidied(text);
        Matcher number = NUMBER.matcher(trimmed);
        if (number.matches() && excess(number).isEmpty()) {
            return Double.parseDouble(trimmed);
        }
        try {
            return UnitTables.ANGLE.parse(text);
        } catch (QuantityFormatException notAnAngle) {
            throw new QuantityFormatException(
                    text,
                    "'%s' is not a %s: %swrite decimal degrees, as in '46.87'"
                            .formatted(QuantityFormatException.shown(text), noun, commaHint(text)));
        }
    }

    /** What to say first when a comma stands where a point should. */
    static String commaHint(CharSequence text) {
        return text.toString().contains(",") ? "the decimal sign is a point, not a comma; " : "";
    }

    /** Without an exponent where a person would write none. */
    static String plain(BigDecimal decimal) {
        if (decimal.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = decimal.stripTrailingZeros();
        int magnitude = stripped.precision() - stripped.scale();
        return magnitude > -7 && magnitude < 22
                ? stripped.toPlainString()
                : stripped.toString().replace("E+", "e").replace("E", "e");
    }
}
