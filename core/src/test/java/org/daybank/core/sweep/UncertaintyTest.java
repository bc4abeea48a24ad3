package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class UncertaintyTest {
    private static final double A = 7;
    private static final double B = 0.1;

    record Angles(double x, double y, double z) {}

    record Outcome(double value) {}

    record Warmth(Temperature air, double gain) {}

    record Total(double sum, String note) {}

    /** The function of Ishigami and Homma 1990, the usual test of indices: sin x + a sin² y + b z⁴ sin x. */
    private static Sweep ishigami() {
        Axis circle = Axis.drawn(Distribution.uniform(-Math.PI, Math.PI));
        return Sweep.of(
                        new Angles(0, 0, 0),
                        at -> new Outcome(Math.sin(at.x())
                                + A * Math.pow(Math.sin(at.y()), 2)
                                + B * Math.pow(at.z(), 4) * Math.sin(at.x())))
                .vary("x", circle)
                .vary("y", circle)
                .vary("z", circle)
                .output("value");
    }

    @Test
    void theIndicesOfIshigamisFunctionAreItsAnalyticOnes() {
        // analytic: V = a²/8 + bπ⁴/5 + b²π⁸/18 + 1/2, V₁ = (1 + bπ⁴/5)²/2, V₂ = a²/8, V₁₃ = 8b²π⁸/225
        double p4 = Math.pow(Math.PI, 4);
        double variance = A * A / 8 + B * p4 / 5 + B * B * p4 * p4 / 18 + 0.5;
        double first = Math.pow(1 + B * p4 / 5, 2) / 2;
        double second = A * A / 8;
        double mixed = 8 * B * B * p4 * p4 / 225;
        Uncertainty found = Uncertainty.of(ishigami(), 1 << 14, 1);
        Uncertainty.Spread spread = found.outputs().get(0);
        assertThat(found.cases()).isEqualTo(5 << 14);
        assertThat(found.failed()).isZero();
        // with 16,384 draws of a Sobol sequence the estimates err by a few thousandths
        assertThat(spread.mean()).isEqualTo(A / 2, within(0.01));
        assertThat(spread.deviation()).isEqualTo(Math.sqrt(variance), within(0.01));
        assertThat(spread.influences().get(0).firstOrder()).isEqualTo(first / variance, within(0.01));
        assertThat(spread.influences().get(1).firstOrder()).isEqualTo(second / variance, within(0.01));
        assertThat(spread.influences().get(2).firstOrder()).isEqualTo(0, within(0.01));
        assertThat(spread.influences().get(0).total()).isEqualTo((first + mixed) / variance, within(0.01));
        assertThat(spread.influences().get(1).total()).isEqualTo(second / variance, within(0.01));
        assertThat(spread.influences().get(2).total()).isEqualTo(mixed / variance, within(0.01));
    }

    @Test
    void percentilesOfASumOfNormalsAreThoseOfItsNormal() {
        // 20 °C ± 3 K plus 5 ± 4 is normal, 25 ± 5: percentile 95 at 25 + 1.6449 · 5; shares of the variance 9/25 and
        // 16/25
        Sweep sweep = Sweep.of(
                        new Warmth(Temperature.celsius(20), 5),
                        at -> new Total(at.air().celsius() + at.gain(), ""))
                .vary("air", Axis.drawn(Distribution.normal(Temperature.celsius(20), TemperatureDifference.kelvins(3))))
                .vary("gain", Axis.drawn(Distribution.normal(5.0, 4.0)))
                .output("sum");
        Uncertainty.Spread spread = Uncertainty.of(sweep, 1 << 12, 5).outputs().get(0);
        assertThat(spread.percentiles().p50()).isEqualTo(25, within(0.05));
        assertThat(spread.percentiles().p95()).isEqualTo(25 + 1.644854 * 5, within(0.1));
        assertThat(spread.percentiles().p5()).isEqualTo(25 - 1.644854 * 5, within(0.1));
        assertThat(spread.deviation()).isEqualTo(5, within(0.02));
        assertThat(spread.influences().get(0).firstOrder()).isEqualTo(0.36, within(0.01));
        assertThat(spread.influences().get(1).total()).isEqualTo(0.64, within(0.01));
    }

    @Test
    void refusedCasesAreCountedAndLeftOut() {
        Sweep sweep = Sweep.of(new Angles(0.5, 0, 0), at -> {
                    if (at.x() < 0.25) {
                        throw new IllegalArgumentException("too small");
                    }
                    return new Outcome(at.x());
                })
                .vary("x", Axis.drawn(Distribution.uniform(0.0, 1.0)))
                .output("value");
        Uncertainty found = Uncertainty.of(sweep, 1 << 10, 2);
        // a quarter of three samples of 1024
        assertThat(found.failed()).isEqualTo(768);
        // those left are even from 0.25 to 1
        assertThat(found.outputs().get(0).mean()).isEqualTo(0.625, within(0.002));
        assertThat(found.outputs().get(0).percentiles().p25()).isEqualTo(0.4375, within(0.002));
    }

    @Test
    void anOutputThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> Uncertainty.of(
                        Sweep.of(new Warmth(Temperature.celsius(20), 5), at -> new Total(at.gain(), "warm"))
                                .vary("gain", Axis.range(1.0, 2.0, 2))
                                .output("note"),
                        16,
                        0))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("note is not a number");
    }

    /** Linear between neighbours: a place of 0.05 · 4 in five values is a fifth of the way from the first to the second. */
    @Test
    void percentilesLieBetweenNeighbours() {
        assertThat(Uncertainty.Percentiles.of(new double[] {10, 20, 30, 40, 50}))
                .usingRecursiveComparison()
                .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
                .isEqualTo(new Uncertainty.Percentiles(12, 14, 20, 30, 40, 46, 48));
    }

    /**
     * With one input the crossed case is that of the second sample: the calculator sees each number of the first sample once and
     * each of the second twice. Mean and deviation are those of both samples together.
     */
    @Test
    void meanAndDeviationAreThoseOfBothSamples() {
        Map<Double, Integer> seen = new ConcurrentHashMap<>();
        Uncertainty.Spread spread = Uncertainty.of(
                        Sweep.of(new Angles(0.5, 0, 0), at -> {
                                    seen.merge(at.x(), 1, Integer::sum);
                                    return new Outcome(at.x() * at.x());
                                })
                                .vary("x", Axis.drawn(Distribution.uniform(3.0, 5.0)))
                                .output("value"),
                        16,
                        3)
                .outputs()
                .get(0);
        seen.remove(0.5);
        assertThat(seen.values()).containsOnly(1, 2).hasSize(32);
        double mean = seen.keySet().stream().mapToDouble(x -> x * x).sum() / 32;
        double squares = seen.keySet().stream()
                .mapToDouble(x -> Math.pow(x * x - mean, 2))
                .sum();
        assertThat(spread.mean()).isEqualTo(mean, within(1e-12));
        assertThat(spread.deviation()).isEqualTo(Math.sqrt(squares / 31), within(1e-12));
    }

    /** Means by the textbook: triangular (a + b + c) / 3; lognormal median · exp(ln² factor / 2). */
    @Test
    void distributionsHaveTheirMeans() {
        assertThat(mean(Distribution.triangular(1.0, 2.0, 6.0))).isEqualTo(3, within(0.002));
        assertThat(mean(Distribution.uniform(1.0, 6.0))).isEqualTo(3.5, within(0.002));
        assertThat(mean(Distribution.logNormal(2.0, 1.5)))
                .isEqualTo(2 * Math.exp(Math.pow(Math.log(1.5), 2) / 2), within(0.002));
        assertThat(Distribution.triangular(2.0, 2.0, 2.0).quantile(0.3)).isEqualTo(2);
    }

    private static double mean(Distribution distribution) {
        double sum = 0;
        int steps = 10_000;
        for (int i = 0; i < steps; i++) {
            sum += distribution.quantile((i + 0.5) / steps);
        }
        return sum / steps;
    }
}
