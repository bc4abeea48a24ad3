package org.daybank.api.wire;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.InvalidInput;
import org.daybank.core.working.Problem;

/** Gathers what is wrong with one request; a hundred problems are told one by one, those beyond are only counted. */
final class Problems {
    private static final int TOLD = 100;

    private final List<Problem> told = new ArrayList<>();
    private int untold;

    void add(String pointer, String code, String message) {
        add(new Problem(pointer, code, message));
    }

    void add(Problem problem) {
        if (full()) {
            untold++;
        } else {
            told.add(problem);
        }
    }

    /** Whether further problems are only counted. */
    boolean full() {
        return told.size() >= TOLD;
    }

    boolean isEmpty() {
        return told.isEmpty();
    }

    /** Everything found, as the exception that carries it. */
    InvalidInput asException() {
        List<Problem> all = new ArrayList<>(told);
        if (untold > 0) {
            all.add(new Problem("", "more", "and %d more problems".formatted(untold)));
        }
        return new InvalidInput(all);
    }
}
