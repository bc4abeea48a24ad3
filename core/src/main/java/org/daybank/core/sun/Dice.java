package org.daybank.core.sun;

import java.util.SplittableRandom;

/** Random numbers that are the same for the same seed, on any machine and any number of threads. */
final class Dice {
    private final SplittableRandom random;

    /** The dice of one year of a series. */
    Dice(long seed, int year) {
        random = new SplittableRandom(new SplittableRandom(seed).nextLong() + year);
    }

    /** Evenly from 0 to below 1. */
    double even() {
        return random.nextDouble();
    }

    /** Normally around 0 with a deviation of 1: G. E. P. Box, M. E. Muller 1958. */
    double normal() {
        return Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
    }
}
