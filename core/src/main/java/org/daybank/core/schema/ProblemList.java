package org.daybank.core.schema;

import java.util.ArrayList;
import java.util.List;

/** Collects the problems of one input: the first hundred one by one, those beyond by their number. */
public final class ProblemList {
    /** Number of problems that are listed one by one. */
    public static final int MAXIMUM_LISTED = 100;

    private final List<Problem> listed = new ArrayList<>();
    private int unlisted;

    /** Creates an empty list. */
    public ProblemList() {}

    /** Adds a problem. */
    public void add(String path, ProblemCode code, String message) {
        add(new Problem(path, code, message));
    }

    /** Adds a problem. */
    public void add(Problem problem) {
        if (isFull()) {
            unlisted++;
        } else {
            listed.add(problem);
        }
    }

    /** Returns whether further problems are only counted. */
    public boolean isFull() {
        return listed.size() >= MAXIMUM_LISTED;
    }

    /** Returns whether there is no problem. */
    public boolean isEmpty() {
        return listed.isEmpty();
    }

    /** Returns the exception that carries every problem. */
    public InvalidInput asException() {
        List<Problem> all = new ArrayList<>(listed);
        if (unlisted > 0) {
            all.add(new Problem("", ProblemCode.MORE, "%s more problems are not listed.".formatted(unlisted)));
        }
        return new InvalidInput(all);
    }
}
