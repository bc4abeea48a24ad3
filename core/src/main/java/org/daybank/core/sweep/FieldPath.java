package org.daybank.core.sweep;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.schema.Problem;

/**
 * The way to a place in a record: names of components joined by points, with the index of an element of a list in
 * brackets, as in {@code loads[3].power}.
 *
 * @param steps names, and indices from 0
 */
public record FieldPath(List<Step> steps) {
    /** Longest path, in characters. */
    public static final int MAXIMUM_LENGTH = 200;

    private static final int MAXIMUM_DIGITS = 6;

    /**
     * One step: a name, or an index when the name is empty.
     *
     * @param name of a component; empty for an element of a list
     * @param index of the element
     */
    public record Step(String name, int index) {
        /** Whether it leads to an element of a list. */
        public boolean isIndex() {
            return name.isEmpty();
        }
    }

    /**
     * Reads a path.
     *
     * @throws IllegalArgumentException when the text is none or longer than {@link #MAXIMUM_LENGTH}; the message says how one
     *     is written
     */
    public static FieldPath parse(String text) {
        if (text.length() > MAXIMUM_LENGTH) {
            throw new IllegalArgumentException("a path must have at most %s characters, but '%s' has %s"
                    .formatted(MAXIMUM_LENGTH, Problem.shortened(text), text.length()));
        }
        List<Step> steps = new ArrayList<>();
        int at = 0;
        do {
            at = name(text, at, steps);
            while (at < text.length() && text.charAt(at) == '[') {
                at = index(text, at + 1, steps);
            }
            if (at < text.length() && text.charAt(at) != '.') {
                throw unreadable(text);
            }
        } while (at++ < text.length());
        return new FieldPath(List.copyOf(steps));
    }

    /** Reads a name, and returns where it ends. */
    private static int name(String text, int from, List<Step> steps) {
        int end = from;
        while (end < text.length() && (isLetter(text.charAt(end)) || (end > from && isInName(text.charAt(end))))) {
            end++;
        }
        if (end == from) {
            throw unreadable(text);
        }
        steps.add(new Step(text.substring(from, end), -1));
        return end;
    }

    /** Reads an index, and returns where its bracket ends. */
    private static int index(String text, int from, List<Step> steps) {
        int end = from;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        boolean closed = end < text.length() && text.charAt(end) == ']';
        if (!closed || end == from || end - from > MAXIMUM_DIGITS) {
            throw unreadable(text);
        }
        steps.add(new Step("", Integer.parseInt(text.substring(from, end))));
        return end + 1;
    }

    private static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isInName(char c) {
        return isDigit(c) || c == '_';
    }

    private static IllegalArgumentException unreadable(String text) {
        return new IllegalArgumentException(
                "'%s' is not a path: write names joined by points and indices in brackets, as in 'loads[3].power'"
                        .formatted(Problem.shortened(text)));
    }
}
