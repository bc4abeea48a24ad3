package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DiceTest {
    private static final int DRAWS = 100_000;

    /** Moments of the normal distribution, 0, 1 and 3, and its share within one deviation, to five standard errors. */
    @Test
    void normalDrawsHaveTheMomentsOfTheirDistribution() {
        Dice dice = new Dice(5, 1);
        double[] drawn =
                IntStream.range(0, DRAWS).mapToDouble(i -> dice.normal()).toArray();

        assertThat(Arrays.stream(drawn).average().orElseThrow()).isEqualTo(0, within(5 / Math.sqrt(DRAWS)));
        assertThat(Arrays.stream(drawn).map(x -> x * x).average().orElseThrow())
                .isEqualTo(1, within(5 * Math.sqrt(2.0 / DRAWS)));
        assertThat(Arrays.stream(drawn).map(x -> x * x * x * x).average().orElseThrow())
                .isEqualTo(3, within(5 * Math.sqrt(96.0 / DRAWS)));
        assertThat(Arrays.stream(drawn).filter(x -> Math.abs(x) < 1).count() / (double) DRAWS)
                .isEqualTo(0.682689, within(5 * Math.sqrt(0.2166 / DRAWS)));
    }

    @Test
    void seedAndYearTellDrawsApart() {
        double one = new Dice(5, 1).even();
        assertThat(new Dice(5, 1).even()).isEqualTo(one);
        assertThat(new Dice(5, 2).even()).isNotEqualTo(one);
        assertThat(new Dice(6, 1).even()).isNotEqualTo(one);
        assertThat(new Dice(5, -1).even()).isNotEqualTo(one);
    }
}
