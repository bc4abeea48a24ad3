package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

class ConfidenceIntervalTest {
    private static ConfidenceInterval of(double... shares) {
        List<Ratio> ratios = DoubleStream.of(shares).mapToObj(Ratio::of).toList();
        return ConfidenceInterval.of(ratios);
    }

    /** Mean 0.02, deviations −0.01, 0, 0.01: s = 0.01, error 0.01/√3 = 0.0057735, t(2) = 4.303: ± 0.024843. */
    @Test
    void isThatOfStudent() {
        ConfidenceInterval interval = of(0.11, 0.12, 0.13);

        assertThat(interval.mean().fraction()).isCloseTo(0.12, within(1e-12));
        assertThat(Objects.requireNonNull(interval.low()).fraction()).isCloseTo(0.095157, within(1e-6));
        assertThat(Objects.requireNonNull(interval.high()).fraction()).isCloseTo(0.144843, within(1e-6));
    }

    @Test
    void staysAShare() {
        ConfidenceInterval interval = of(0, 0, 0.01);

        assertThat(interval.low()).isEqualTo(Ratio.ZERO);
    }

    @Test
    void aSingleYearHasNone() {
        assertThat(of(0.3)).isEqualTo(new ConfidenceInterval(Ratio.of(0.3), null, null));
    }

    @Test
    void manyYearsComeDownToTheNormalDistribution() {
        assertThat(StudentT.at95Percent(1)).isEqualTo(12.706);
        assertThat(StudentT.at95Percent(35)).isEqualTo(2.042);
        assertThat(StudentT.at95Percent(999)).isEqualTo(1.980);
    }
}
