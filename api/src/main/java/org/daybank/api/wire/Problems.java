package org.daybank.api.wire;

import org.daybank.core.working.InvalidInput;
import org.daybank.core.working.Problem;

/** Collects what is wrong with one request, within the bounds that the library sets. */
final class Problems {
    private final org.daybank.core.working.Problems found = new org.daybank.core.working.Problems();

    void add(String pointer, String code, String message) {
        found.add(pointer, code, message);
    }

    void add(Problem problem) {
        found.add(problem);
    }

    /** Whether further problems are only counted. */
    boolean full() {
        return found.isFull();
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** Everything found, as the exception that carries it. */
    InvalidInput asException() {
        return found.asException();
    }
}
