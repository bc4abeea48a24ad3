package org.daybank.core.working;

/**
 * One thing that is wrong with an input.
 *
 * @param path where, as a JSON pointer from the record that was checked: {@code /loads/3/power}; empty for the whole
 * @param code stable name of the kind of problem: {@code missing}, {@code outOfRange}, {@code unreadable},
 *     {@code unknownName}, {@code conflict}, {@code inconsistent}; {@code more} says how many problems are not listed
 * @param message names the field, the value and what would be accepted
 */
public record Problem(String path, String code, String message) {
    private static final int LONGEST_SHOWN = 40;

    /** Returns the beginning of a text from an input, short enough for a message. */
    public static String shortened(String text) {
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    }

    /** This problem as seen from a record that holds the checked one under {@code prefix}. */
    public Problem under(String prefix) {
        return new Problem(prefix + path, code, message);
    }
}
