package org.daybank.core.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Collects the problems of one input. The first {@link #MAXIMUM} are kept and the others are only counted, so that a large
 * input with a mistake on every line takes no more memory than a small one.
 */
public final class Problems {
    /** How many problems of one input are reported one by one. */
    public static final int MAXIMUM = 100;

    private final List<Problem> kept = new ArrayList<>();
    private int omitted;

    /** Creates an empty collection. */
    public Problems() {}

    /** Adds a problem, or only counts it when the collection is full. */
    public Problems add(Problem problem) {
        if (isFull()) {
            omitted++;
        } else {
            kept.add(problem);
        }
        return this;
    }

    /** Adds a problem, or only counts it when the collection is full. */
    public Problems add(String path, ProblemCode code, String message) {
        return add(new Problem(path, code, message));
    }

    /**
     * Adds the problems of a part of the input.
     *
     * @param refused what the part was refused with
     * @param seenFromHere turns a problem of the part into one of the whole
     */
    public Problems addAll(InvalidInput refused, UnaryOperator<Problem> seenFromHere) {
        for (Problem problem : refused.reported()) {
            add(seenFromHere.apply(problem));
        }
        omitted += refused.omitted();
        return this;
    }

    /** Returns whether further problems are only counted. */
    public boolean isFull() {
        return kept.size() >= MAXIMUM;
    }

    /** Returns whether nothing was added. */
    public boolean isEmpty() {
        return kept.isEmpty();
    }

    /** Returns the exception that carries the problems. */
    public InvalidInput asException() {
        return new InvalidInput(kept, omitted);
    }

    /**
     * Ends the collection.
     *
     * @throws InvalidInput when anything was added
     */
    public void throwIfAny() {
        if (!isEmpty()) {
            throw asException();
        }
    }
}
