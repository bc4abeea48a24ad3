package org.daybank.core.schema;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Thrown when an input can never be right; carries what is wrong with it. */
public final class InvalidInput extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** The problems that are reported one by one. */
    private final transient List<Problem> reported;

    private final int omitted;

    /**
     * Creates the exception for some problems, of which the first {@link Problems#MAXIMUM} are reported one by one.
     *
     * @param problems at least one
     */
    public InvalidInput(List<Problem> problems) {
        this(
                problems.subList(0, Math.min(problems.size(), Problems.MAXIMUM)),
                Math.max(0, problems.size() - Problems.MAXIMUM));
    }

    /**
     * Creates the exception for some problems and a number of others.
     *
     * @param reported at least one
     * @param omitted how many more there are
     */
    InvalidInput(List<Problem> reported, int omitted) {
        super(listed(reported, omitted).map(Problem::message).collect(Collectors.joining(" ")));
        this.reported = List.copyOf(reported);
        this.omitted = omitted;
    }

    /**
     * Returns what was found wrong, in the order of the input; where more than {@link Problems#MAXIMUM} problems were found,
     * a last entry of code {@code more} says how many are not listed.
     */
    public List<Problem> problems() {
        return omitted == 0 ? reported : listed(reported, omitted).toList();
    }

    List<Problem> reported() {
        return reported;
    }

    int omitted() {
        return omitted;
    }

    private static Stream<Problem> listed(List<Problem> reported, int omitted) {
        return omitted == 0
                ? reported.stream()
                : Stream.concat(
                        reported.stream(),
                        Stream.of(new Problem(
                                "",
                                ProblemCode.MORE,
                                "%s more %s not listed."
                                        .formatted(omitted, omitted == 1 ? "problem is" : "problems are"))));
    }
}
