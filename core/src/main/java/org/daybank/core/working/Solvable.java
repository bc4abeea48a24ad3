package org.daybank.core.working;

import java.util.Optional;

/**
 * A result of a calculation that may have no solution: the input is valid, but nothing meets it. A sweep marks the row of
 * such a case with {@link #unsolvedStatus()} and its reason.
 */
public interface Solvable {
    /** Reason of a selection in which every candidate was rejected. */
    String NOTHING_FITS = "nothingFits";

    /** Returns why there is no solution, as a stable camelCase code; empty when there is one. */
    Optional<String> unsolvedReason();

    /** Returns the status of a case without a solution, as a stable camelCase code. */
    default String unsolvedStatus() {
        return "noSolution";
    }
}
