package org.daybank.core.sweep;

import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * How the cases of a sweep are chosen.
 *
 * @param method every point of the grid, or a way to draw
 * @param count how many cases are drawn; absent on a grid, whose axes say how many there are
 * @param seed makes the draws repeatable: the same seed gives the same rows
 */
public record Sampling(
        @Assumed(value = "grid", source = "every combination of the values")
        Method method,

        @Bounds(minimum = "1", maximum = "2147483647") @Nullable
        Integer count,

        @Bounds(minimum = "0", maximum = "2147483647")
        @Assumed(value = "0", source = "any will do; 0 leaves a Sobol sequence as published")
        Integer seed) {

    /** Ways to choose. */
    public enum Method {
        /** Every combination of the values of the axes, the last axis fastest. */
        GRID,
        /** Each draw on its own. */
        RANDOM,
        /** Latin hypercube: on each axis one draw in each of as many equally likely strata as there are draws. */
        LATIN_HYPERCUBE,
        /** The sequence of Sobol, which fills the space evenly; best with a power of two draws. */
        SOBOL
    }

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a count is missing or has no place
     */
    public Sampling {
        method = Defaults.otherwise(method, Sampling.class, "method");
        seed = Defaults.otherwise(seed, Sampling.class, "seed");
        Validation.of(Sampling.class, method, count, seed)
                .that(
                        method == Method.GRID || count != null,
                        "count",
                        ProblemCode.MISSING,
                        "count is required: the number of cases to draw.")
                .that(
                        method != Method.GRID || count == null,
                        "count",
                        ProblemCode.CONFLICT,
                        "count has no place on a grid: each axis says how many values it has")
                .done();
    }

    /** Every combination of the values of the axes. */
    public static Sampling grid() {
        return new Sampling(Method.GRID, null, 0);
    }

    /** So many cases, each drawn on its own. */
    public static Sampling random(int count, int seed) {
        return new Sampling(Method.RANDOM, count, seed);
    }

    /** So many cases, spread evenly along each axis. */
    public static Sampling latinHypercube(int count, int seed) {
        return new Sampling(Method.LATIN_HYPERCUBE, count, seed);
    }

    /** The first so many points of the sequence of Sobol, as published. */
    public static Sampling sobol(int count) {
        return new Sampling(Method.SOBOL, count, 0);
    }

    /** So many points of the sequence of Sobol, shifted digit by digit as the seed says. */
    public static Sampling sobol(int count, int seed) {
        return new Sampling(Method.SOBOL, count, seed);
    }
}
