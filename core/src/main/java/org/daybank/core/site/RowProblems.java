package org.daybank.core.site;

import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;

/** Collects the problems of the rows of a weather file, each with its line. */
final class RowProblems {
    private final Problems problems = new Problems();

    void add(int line, ProblemCode code, String message) {
        problems.add("/line " + line, code, "line %s: %s".formatted(line, message));
    }

    void addForFile(ProblemCode code, String message) {
        problems.add("", code, message);
    }

    /**
     * Ends the reading.
     *
     * @throws org.daybank.core.schema.InvalidInput when there was any problem
     */
    void done() {
        problems.throwIfAny();
    }
}
