package org.daybank.core.sun;

/** Moves numbers so that their weighted mean is right, and none leaves its bounds. */
final class BoundedMean {
    private BoundedMean() {}

    static double of(double[] values, double[] weights) {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * values[i];
            weight += weights[i];
        }
        return weight > 0 ? sum / weight : 0;
    }

    /**
     * Moves every number the same share of its way to zero, or to the greatest, until the mean is the one that is asked for.
     *
     * @param values from 0 to {@code most}; changed in place
     * @param mean from 0 to {@code most}
     */
    static void reach(double mean, double[] values, double[] weights, double most) {
        double now = of(values, weights);
        for (int i = 0; i < values.length; i++) {
            if (now > mean) {
                values[i] *= mean / now;
            } else if (now < most) {
                values[i] += (most - values[i]) * (mean - now) / (most - now);
            }
        }
    }
}
