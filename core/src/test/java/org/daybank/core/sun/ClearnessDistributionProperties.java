package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClearnessDistributionProperties {
    @Property
    void theDaysKeepTheMeanOfTheirMonth(
            @ForAll @DoubleRange(min = 0, max = 0.9) double mean, @ForAll @IntRange(min = 2, max = 40) int count) {
        double[] days = ClearnessDistribution.classes(mean, count);

        assertThat(Arrays.stream(days).average().orElseThrow()).isCloseTo(mean, within(1e-12));
        assertThat(days).isSorted();
        // K_max of Hollands and Huget at most 0.6313 + 0.267 · 0.9; keeping the mean moves it by some per cent
        assertThat(days[count - 1]).isBetween(mean, 0.95);
    }

    @Test
    void halfTheDaysOfAnEvenMonthAreDuller() {
        // With the mean half way between the bounds the exponential is flat: K = (0.05 + K_max) / 2 is met at K =
        // 0.39126,
        // where K_max = 0.6313 + 0.267 · 0.39126 − 11.9 · 0.35874⁸ = 0.6313 + 0.10447 − 0.00326 = 0.73251. Ten classes
        // lie
        // 0.68251 / 10 apart
        double[] days = ClearnessDistribution.classes(0.39126, 10);

        for (int i = 1; i < 10; i++) {
            assertThat(days[i] - days[i - 1]).isCloseTo(0.06825, within(2e-5));
        }
    }

    /**
     * The days by Bendt, Collares-Pereira and Rabl 1981: a share F of them lies below {@code K = ln((1 − F)·e^(γ·K_min) +
     * F·e^(γ·K_max)) / γ}, with γ from Herzog's fit (Duffie and Beckman, eq. 2.9.6) in place of our solution: {@code γ =
     * −1.498 + (1.184·ξ − 27.182·e^(−1.5·ξ)) / (K_max − K_min)}, {@code ξ = (K_max − K_min) / (K_max − K̄)}. Herzog's fit
     * misses the mean by up to 0.002, and ten days in the middle of their classes miss it by up to 0.5 %, by which ours are
     * then scaled: 0.002 + 0.005 · 0.82 = 0.006.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.4, 0.5, 0.6, 0.7})
    void daysAsBendtAndOthersSpreadThem(double mean) {
        double most = 0.6313 + 0.267 * mean - 11.9 * Math.pow(mean - 0.75, 8);
        double xi = (most - 0.05) / (most - mean);
        double gamma = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (most - 0.05);

        double[] days = ClearnessDistribution.classes(mean, 10);

        for (int i = 0; i < 10; i++) {
            double below = (i + 0.5) / 10;
            double expected = Math.log((1 - below) * Math.exp(gamma * 0.05) + below * Math.exp(gamma * most)) / gamma;
            assertThat(days[i]).isCloseTo(expected, within(0.006));
        }
    }
}
