package org.daybank.core.schema;

/**
 * One problem with an input.
 *
 * @param path location, as a JSON pointer from the record that was validated: {@code /loads/3/power}; empty for the whole
 * @param code kind of problem
 * @param message names the field, the value and what would be accepted: "{field} must be {constraint}, but was {value}"
 */
public record Problem(String path, ProblemCode code, String message) {
    private static final int LONGEST_SHOWN = 40;

    /** Returns the beginning of a text from an input, short enough for a message. */
    public static String shortened(String text) {
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    }

    /** Returns this problem as seen from a record that holds the validated one under {@code prefix}. */
    public Problem under(String prefix) {
        return new Problem(prefix + path, code, message);
    }
}
