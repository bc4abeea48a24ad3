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
     * The days by Bendt, Collares-Pereira and Rabl 1981, whose density goes as {@code e^(γ·K)} from K_min to K_max. Here γ is
     * found by adding up the density in small steps until its mean is right, and the day below which a share F lies likewise;
     * ten such days miss the mean by up to 0.5 %, by which they are scaled. The steps leave 1e-4.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.4, 0.5, 0.6, 0.7})
    void daysAsBendtAndOthersSpreadThem(double mean) {
        double most = 0.6313 + 0.267 * mean - 11.9 * Math.pow(mean - 0.75, 8);
        double gamma = -20;
        while (meanByAddingUp(gamma, most) < mean) {
            gamma += 0.001;
        }
        double[] expected = new double[10];
        for (int i = 0; i < 10; i++) {
            expected[i] = dayBelowWhichLies((i + 0.5) / 10, gamma, most);
        }
        double scale = mean / Arrays.stream(expected).average().orElseThrow();

        double[] days = ClearnessDistribution.classes(mean, 10);

        assertThat(scale).isCloseTo(1, within(0.005));
        for (int i = 0; i < 10; i++) {
            assertThat(days[i]).isCloseTo(expected[i] * scale, within(1e-4));
        }
    }

    private static double meanByAddingUp(double gamma, double most) {
        double weights = 0;
        double sum = 0;
        double step = (most - 0.05) / 1000;
        for (int i = 0; i < 1000; i++) {
            double clearness = 0.05 + (i + 0.5) * step;
            double weight = Math.exp(gamma * clearness);
            weights += weight;
            sum += weight * clearness;
        }
        return sum / weights;
    }

    private static double dayBelowWhichLies(double share, double gamma, double most) {
        int steps = 20_000;
        double step = (most - 0.05) / steps;
        double all = 0;
        for (int i = 0; i < steps; i++) {
            all += Math.exp(gamma * (0.05 + (i + 0.5) * step));
        }
        double below = 0;
        int i = 0;
        while (below < share * all) {
            below += Math.exp(gamma * (0.05 + (i + 0.5) * step));
            i++;
        }
        return 0.05 + i * step;
    }
}
