package org.daybank.core.site;

import org.daybank.core.working.Problems;

/** What is wrong with the rows of a weather file, each with its line; the first hundred are listed. */
final class RowProblems {
    private final Problems problems = new Problems();

    void add(int line, String code, String message) {
        problems.add("/line " + line, code, "line %s: %s".formatted(line, message));
    }

    void addForFile(String code, String message) {
        problems.add("", code, message);
    }

    /**
     * Ends the reading.
     *
     * @throws org.daybank.core.working.InvalidInput when anything was wrong
     */
    void done() {
        problems.throwIfAny();
    }
}
