package org.daybank.core.site;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.InvalidInput;
import org.daybank.core.working.Problem;

/** What is wrong with the rows of a weather file, each with its line; a broken file is told by its first fifty. */
final class RowProblems {
    private static final int MOST = 50;
    private final List<Problem> problems = new ArrayList<>();
    private int more;

    void add(int line, String code, String message) {
        add(new Problem("/line " + line, code, "line %d: %s".formatted(line, message)));
    }

    void addForFile(String code, String message) {
        add(new Problem("", code, message));
    }

    private void add(Problem problem) {
        if (problems.size() < MOST) {
            problems.add(problem);
        } else {
            more++;
        }
    }

    /**
     * Ends the reading.
     *
     * @throws InvalidInput when anything was wrong
     */
    void done() {
        if (more > 0) {
            problems.add(new Problem("", "outOfRange", "and %d problems more".formatted(more)));
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
    }
}
