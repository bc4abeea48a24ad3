package org.daybank.core.site;

import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.ProblemList;

/** Collects the problems of the rows of a weather file, each with its line. */
final class RowProblems {
    private final ProblemList problems = new ProblemList();

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
        if (!problems.isEmpty()) {
            throw problems.asException();
        }
    }
}
