package org.daybank.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;

/** Decimal text and numbers, in no locale: the decimal sign is a point. */
final class Decimals {
    /** Longest number text that is read; more digits than any measurement has. */
    static final int MAX_LENGTH = 60;

    /** A decimal number as people, spreadsheets and JSON write it; the exponent is bounded so that nothing explodes. */
    static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d{1,3})?");

    private Decimals() {}

    /** Text that reads back to exactly this number, without an exponent where a person would write none. */
    static String shortest(double number) {
        return plain(new BigDecimal(Double.toString(number)));
    }

    /** Text of this number to so many significant digits, for reading. */
    static String rounded(double number, int significantDigits) {
        return plain(new BigDecimal(number).round(new MathContext(significantDigits)));
    }

    /** Reads decimal degrees, with or without their unit. */
    static double degrees(CharSequence text, String noun) {
        String trimmed = text.toString().strip().replace('−', '-');
        if (trimmed.length() <= MAX_LENGTH && NUMBER.matcher(trimmed).matches()) {
            return Double.parseDouble(trimmed);
        }
        try {
            return UnitTables.ANGLE.parse(text);
        } catch (QuantityFormatException notAnAngle) {
            throw new QuantityFormatException(
                    text,
                    "'%s' is not a %s: write decimal degrees, as in '46.87'"
                            .formatted(QuantityFormatException.shown(text), noun));
        }
    }

    private static String plain(BigDecimal decimal) {
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
