package org.daybank.api.http;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What is wrong, as a line of text for the cell of a spreadsheet. It may be pasted into the query of the next cell's URL, so
 * it contains none of the characters that have a meaning there; the service refuses it as a value.
 */
final class InlineError {
    private static final String MARKER = "ERROR: ";
    private static final int MAXIMUM_LENGTH = 500;

    /** A byte that ends a cell, or a line of one, early; and several blanks. */
    private static final Pattern BLANKS = Pattern.compile("[\\p{Cntrl}\\s]+");

    private InlineError() {}

    /** Returns the line for a sentence. */
    static String of(String sentence) {
        String plain = MARKER
                + sentence.replace("%", " percent ")
                        .replace("&", " and ")
                        .replace("#", " number ")
                        .replace("?", " ");
        String line = BLANKS.matcher(plain).replaceAll(" ").strip();
        return line.length() > MAXIMUM_LENGTH ? line.substring(0, MAXIMUM_LENGTH) + "…" : line;
    }

    /** Returns whether a value begins as such a line does. */
    static boolean isOne(String value) {
        return value.strip().toUpperCase(Locale.ROOT).startsWith(MARKER.strip());
    }
}
