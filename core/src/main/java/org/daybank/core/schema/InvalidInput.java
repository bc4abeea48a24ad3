package org.daybank.core.schema;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when an input can never be right; carries everything that is wrong with it. */
public final class InvalidInput extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Everything that was found wrong. */
    private final transient List<Problem> problems;

    /**
     * With everything that was found wrong.
     *
     * @param problems at least one
     */
    public InvalidInput(List<Problem> problems) {
        super(problems.stream().map(Problem::message).collect(Collectors.joining(" ")));
        this.problems = List.copyOf(problems);
    }

    /** Everything that was found wrong, in the order of the fields. */
    public List<Problem> problems() {
        return problems;
    }
}
