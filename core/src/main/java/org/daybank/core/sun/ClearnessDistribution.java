package org.daybank.core.sun;

import java.util.Arrays;

/**
 * How clear the days of a month are around their mean: the daily clearness index follows a truncated exponential whose
 * shape depends on the monthly mean alone.
 *
 * <p>Bendt, Collares-Pereira and Rabl 1981 (Solar Energy 27), with the least of 0.05 and the greatest clearness of Hollands
 * and Huget 1983 (Solar Energy 30): {@code K_max = 0.6313 + 0.267 K̄ − 11.9 (K̄ − 0.75)⁸}.
 */
final class ClearnessDistribution {
    private static final double LEAST = 0.05;

    private ClearnessDistribution() {}

    /** Daily clearness below which a share {@code F} of the days lies, for each {@code F} in the middle of equal classes. */
    static double[] classes(double mean, int count) {
        double most = 0.6313 + 0.267 * mean - 11.9 * Math.pow(mean - 0.75, 8);
        double[] clearness = new double[count];
        if (mean <= LEAST || mean >= most) {
            Arrays.fill(clearness, mean);
            return clearness;
        }
        double shape = shape(mean, most);
        double sum = 0;
        for (int i = 0; i < count; i++) {
            clearness[i] = quantile((i + 0.5) / count, shape, most);
            sum += clearness[i];
        }
        for (int i = 0; i < count; i++) {
            clearness[i] *= mean * count / sum;
        }
        return clearness;
    }

    private static double quantile(double share, double shape, double most) {
        if (Math.abs(shape) < 1e-9) {
            return LEAST + share * (most - LEAST);
        }
        // ln((1 − F)·e^(γ·K_min) + F·e^(γ·K_max)) / γ, with the larger exponential taken out
        return most + Math.log(share + (1 - share) * Math.exp(shape * (LEAST - most))) / shape;
    }

    /** The exponent γ for which the distribution has the mean, by bisection: the mean grows with it. */
    private static double shape(double mean, double most) {
        double low = -200;
        double high = 200;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (meanOf(middle, most) < mean) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double meanOf(double shape, double most) {
        double width = most - LEAST;
        double exponent = shape * width;
        if (Math.abs(exponent) < 1e-6) {
            return LEAST + width / 2;
        }
        return most - 1 / shape + width / Math.expm1(exponent);
    }
}
