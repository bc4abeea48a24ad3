package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

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
}
