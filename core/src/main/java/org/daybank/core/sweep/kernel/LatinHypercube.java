package org.daybank.core.sweep.kernel;

/**
 * Latin hypercube sampling (McKay, Beckman and Conover 1979): along each axis one point in each of as many strata as there
 * are points, the strata of an axis in an order of its own.
 *
 * <p>The order is a Feistel network over the numbers of the strata, walked along its cycles until it comes back among them
 * (Black and Rogaway 2002): a permutation of which any element can be had without the others.
 */
public final class LatinHypercube {
    private static final int ROUNDS = 6;

    private final long count;
    private final long seed;
    private final int halfBits;
    private final long halfMask;

    /** So many points. */
    public LatinHypercube(long count, long seed) {
        this.count = count;
        this.seed = seed;
        int bits = 64 - Long.numberOfLeadingZeros(Math.max(1, count - 1));
        this.halfBits = Math.max(1, (bits + 1) / 2);
        this.halfMask = (1L << halfBits) - 1;
    }

    /** One coordinate of one point, from 0 to below 1. */
    public double coordinate(long row, int dimension) {
        double within = Mix.unit(Mix.bits(~seed, dimension, row));
        return Math.min((stratum(row, dimension) + within) / count, Math.nextDown(1.0));
    }

    /** The stratum in which a point lies along one axis. */
    long stratum(long row, int dimension) {
        long number = row;
        do {
            number = exchanged(number, dimension);
        } while (number >= count);
        return number;
    }

    private long exchanged(long number, int dimension) {
        long left = number >>> halfBits;
        long right = number & halfMask;
        for (int round = 0; round < ROUNDS; round++) {
            long mixed = left ^ (Mix.bits(seed, (long) dimension * ROUNDS + round, right) & halfMask);
            left = right;
            right = mixed;
        }
        return (left << halfBits) | right;
    }
}
