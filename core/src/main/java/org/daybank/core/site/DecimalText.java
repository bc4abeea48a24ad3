package org.daybank.core.site;

/** Reads decimal numbers out of long texts without cutting them up: weather files hold hundreds of thousands. */
final class DecimalText {
    private static final int MOST_EXACT_DIGITS = 15;
    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private DecimalText() {}

    /** The number between two positions, blanks around it allowed; NaN when there is none, or something else. */
    static double read(CharSequence text, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && text.charAt(start) == ' ') {
            start++;
        }
        while (end > start && (text.charAt(end - 1) == ' ' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        boolean negative = start < end && text.charAt(start) == '-';
        if (negative || (start < end && text.charAt(start) == '+')) {
            start++;
        }
        double magnitude = plain(text, start, end);
        return negative ? -magnitude : magnitude;
    }

    /** Up to fifteen digits with a point among them are exact as whole number over power of ten; the rest is rare. */
    private static double plain(CharSequence text, int start, int end) {
        long digits = 0;
        int count = 0;
        int point = -1;
        for (int i = start; i < end; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count++;
            } else if (c == '.' && point < 0) {
                point = i;
            } else {
                return withExponent(text, start, end);
            }
            if (count > MOST_EXACT_DIGITS) {
                return withExponent(text, start, end);
            }
        }
        if (count == 0) {
            return Double.NaN;
        }
        return point < 0 ? digits : digits / POWERS_OF_TEN[end - point - 1];
    }

    private static double withExponent(CharSequence text, int start, int end) {
        for (int i = start; i < end; i++) {
            char c = text.charAt(i);
            boolean ordinary =
                    (c >= '0' && c <= '9') || c == '.' || (i > start && (c == 'e' || c == 'E' || c == '-' || c == '+'));
            if (!ordinary) {
                return Double.NaN;
            }
        }
        try {
            return Double.parseDouble(text.subSequence(start, end).toString());
        } catch (NumberFormatException notANumber) {
            return Double.NaN;
        }
    }
}
