package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
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
        assertThat(found.unanswered()).isZero();
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
        assertThat(found.unanswered()).isEqualTo(768);
        // those left are even from 0.25 to 1
        assertThat(found.outputs().get(0).mean()).isEqualTo(0.625, within(0.002));
        assertThat(found.outputs().get(0).percentiles().p25()).isEqualTo(0.4375, within(0.002));
    }

    record Half(double whole, Optional<Double> part) {}

    /**
     * z = x + 2 y of two inputs even from 0 to 1, with no value where x < 1/4. What has an answer is x even from 1/4 to 1
     * and y even from 0 to 1, still independent: mean 0.625 + 2 · 0.5; variance (3/4)²/12 + 4/12 = 0.046875 + 0.333333 =
     * 0.380208; first-order and total index of x alike 0.046875 / 0.380208 = 0.123288, of y 0.876712.
     *
     * <p>Of 1024 draws there are four cases: both points, and each with one input of the other point. A case lacks z when its
     * x is below 1/4, a quarter of them: 1024. A draw has a point without z when either x is below 1/4: 1 − (3/4)² = 7/16 of
     * the draws, 448; the crossed cases have the x of one of the two points, so that no more draws are incomplete.
     */
    @Test
    void casesWithoutAValueAreCountedForTheirOutputAndIncompleteDrawsExcludedAsAWhole() {
        Axis even = Axis.drawn(Distribution.uniform(0.0, 1.0));
        Uncertainty found = Uncertainty.of(
                Sweep.of(
                                new Angles(0.5, 0.5, 0),
                                at -> new Half(
                                        at.x() + at.y(),
                                        at.x() < 0.25 ? Optional.empty() : Optional.of(at.x() + 2 * at.y())))
                        .vary("x", even)
                        .vary("y", even)
                        .output("whole")
                        .output("part"),
                1 << 10,
                4);
        assertThat(found.unanswered())
                .as("every case has an answer, if not this value")
                .isZero();
        Uncertainty.Spread whole = found.outputs().get(0);
        assertThat(whole.unanswered()).isZero();
        assertThat(whole.reasons()).isEmpty();
        assertThat(whole.excludedFromIndices()).isZero();
        assertThat(whole.mean()).isEqualTo(1, within(0.002));
        Uncertainty.Spread part = found.outputs().get(1);
        assertThat(part.unanswered()).isCloseTo(1024, within(8));
        assertThat(part.reasons()).containsExactly(new Uncertainty.ReasonCount("absent", part.unanswered()));
        assertThat(part.excludedFromPercentiles()).isCloseTo(448, within(12));
        assertThat(part.excludedFromIndices()).isEqualTo(part.excludedFromPercentiles());
        assertThat(part.mean()).isEqualTo(1.625, within(0.01));
        assertThat(part.deviation()).isEqualTo(Math.sqrt(0.380208), within(0.01));
        assertThat(part.influences().get(0).firstOrder()).isEqualTo(0.123288, within(0.02));
        assertThat(part.influences().get(0).total()).isEqualTo(0.123288, within(0.02));
        assertThat(part.influences().get(1).firstOrder()).isEqualTo(0.876712, within(0.02));
        assertThat(part.influences().get(1).total()).isEqualTo(0.876712, within(0.02));
    }

    /**
     * A value is absent where x + y > 1: half of all cases. A draw is complete when both points and both crossings have one;
     * with x₁, x₂, y₁, y₂ that is max(x) + max(y) ≤ 1. The greater of two even numbers has the density 2 m, so that the
     * probability is ∫₀¹ 2 m (1 − m)² dm = 2 (1/2 − 2/3 + 1/4) = 1/6. Both points alone: 1/4.
     */
    @Test
    void aDrawIsExcludedFromTheIndicesWhenACrossedCaseHasNoValue() {
        Axis even = Axis.drawn(Distribution.uniform(0.0, 1.0));
        int draws = 1 << 12;
        Uncertainty.Spread part = Uncertainty.of(
                        Sweep.of(
                                        new Angles(0.25, 0.25, 0),
                                        at -> new Half(
                                                0,
                                                at.x() + at.y() > 1 ? Optional.empty() : Optional.of(at.x() + at.y())))
                                .vary("x", even)
                                .vary("y", even)
                                .output("part"),
                        draws,
                        7)
                .outputs()
                .get(0);
        assertThat(part.unanswered()).isCloseTo(4 * draws / 2, within(100));
        assertThat(part.excludedFromPercentiles()).isCloseTo(draws * 3 / 4, within(60));
        assertThat(part.excludedFromIndices()).isCloseTo(draws * 5 / 6, within(60));
        // the sum of two even numbers, given that it is at most 1, has the density 2 s: mean 2/3, median √½
        assertThat(part.mean()).isEqualTo(2.0 / 3, within(0.01));
        assertThat(part.percentiles().p50()).isEqualTo(Math.sqrt(0.5), within(0.015));
        assertThat(part.influences())
                .allSatisfy(influence -> assertThat(influence.total()).isBetween(0.0, 1.0));
    }

    /** Refused, failed and unsolved cases are told apart by their reason. */
    @Test
    void reasonsAreCounted() {
        Uncertainty found = Uncertainty.of(
                Sweep.of(new Angles(0.5, 0, 0), at -> {
                            if (at.x() < 0.125) {
                                throw new InvalidInput(
                                        List.of(new Problem("/x", ProblemCode.OUT_OF_RANGE, "x is too small")));
                            }
                            if (at.x() < 0.375) {
                                throw new ArithmeticException("no root");
                            }
                            return new Outcome(at.x());
                        })
                        .vary("x", Axis.drawn(Distribution.uniform(0.0, 1.0)))
                        .output("value"),
                1 << 10,
                2);
        // of 3 · 1024 cases a quarter failed and an eighth was refused
        assertThat(found.unanswered()).isEqualTo(1152);
        assertThat(found.outputs().get(0).reasons())
                .containsExactly(
                        new Uncertainty.ReasonCount("notCalculable", 768),
                        new Uncertainty.ReasonCount("outOfRange", 384));
    }

    @Test
    void anOutputWithoutAnyValueIsRefusedWithTheReasons() {
        assertThatThrownBy(() -> Uncertainty.of(
                        Sweep.of(new Angles(0.5, 0, 0), at -> {
                                    if (at.x() != 0.5) {
                                        throw new ArithmeticException("no root");
                                    }
                                    return new Outcome(at.x());
                                })
                                .vary("x", Axis.drawn(Distribution.uniform(0.0, 1.0)))
                                .output("value"),
                        16,
                        0))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(
                        "value: fewer than two draws have an answer; cases without one: 48 notCalculable");
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
