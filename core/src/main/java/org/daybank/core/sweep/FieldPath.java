package org.daybank.core.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The way to a place in a record: names of components joined by points, with the index of an element of a list in
 * brackets, as in {@code loads[3].power}.
 *
 * @param steps names, and indices from 0
 */
public record FieldPath(List<Step> steps) {
    private static final Pattern TEXT =
            Pattern.compile("[A-Za-z]\\w*(?:\\[\\d{1,6}\\])*(?:\\.[A-Za-z]\\w*(?:\\[\\d{1,6}\\])*)*");
    private static final Pattern STEP = Pattern.compile("([A-Za-z]\\w*)|\\[(\\d+)\\]");

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
     * @throws IllegalArgumentException when the text is none; the message says how one is written
     */
    public static FieldPath parse(String text) {
        if (!TEXT.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    "'%s' is not a path: write names joined by points and indices in brackets, as in 'loads[3].power'"
                            .formatted(text.length() > 60 ? text.substring(0, 60) + "…" : text));
        }
        List<Step> steps = new ArrayList<>();
        for (Matcher step = STEP.matcher(text); step.find(); ) {
            String index = step.group(2);
            steps.add(index == null ? new Step(step.group(1), -1) : new Step("", Integer.parseInt(index)));
        }
        return new FieldPath(List.copyOf(steps));
    }
}
