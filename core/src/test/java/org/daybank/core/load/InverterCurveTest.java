package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InverterCurveTest {
    private static final Power KILOWATT = Power.kilowatts(1);
    private static final InverterCurve SCHMIDT_SAUER =
            new InverterCurve(KILOWATT, Ratio.of(0.01), Ratio.of(0.02), Ratio.of(0.05));

    /**
     * {@code η = p / (p + k0 + k1·p + k2·p²)}: at 0.1 for instance 0.1 / (0.1 + 0.01 + 0.002 + 0.0005) = 0.1 / 0.1125 =
     * 0.8889. The figures are published to three digits.
     */
    @ParameterizedTest
    @CsvSource({"20, 0.657", "100, 0.889", "500, 0.939", "1000, 0.926"})
    void partLoadEfficiencyBySchmidtAndSauer(double watts, double efficiency) {
        assertThat(watts / SCHMIDT_SAUER.drawFor(Power.watts(watts)).watts()).isCloseTo(efficiency, within(5e-4));
    }

    @Test
    void withoutLoadItDrawsItsIdlePower() {
        assertThat(SCHMIDT_SAUER.idle().watts()).isCloseTo(10, within(1e-12));
        assertThat(SCHMIDT_SAUER.drawFor(Power.ZERO).watts()).isCloseTo(10, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "2000, 10, 0.95, 0.90",
        "3000, 24, 0.93, 0.88",
        "500, 2, 0.90, 0.90",
        "5000, 60, 0.965, 0.94",
        "1000, 0, 0.95, 0.91"
    })
    void theFitPassesThroughTheDataSheet(double rating, double idle, double peak, double full) {
        InverterCurve curve = InverterCurve.fit(Power.watts(rating), Power.watts(idle), Ratio.of(peak), Ratio.of(full));
        double best = 0;
        for (double share = 0.0005; share <= 1; share += 0.0005) {
            double watts = share * rating;
            best = Math.max(best, watts / curve.drawFor(Power.watts(watts)).watts());
        }

        assertThat(curve.idle().watts()).isCloseTo(idle, within(1e-9));
        assertThat(rating / curve.drawFor(Power.watts(rating)).watts()).isCloseTo(full, within(1e-12));
        // the top lies between two steps of the search: beside a flat top a step of 0.0005 loses less than 1e-4,
        // also where it lies at no load at all (no idle draw, curve falling by k2 · 0.0005)
        assertThat(best).isCloseTo(peak, within(1e-4)).isLessThanOrEqualTo(peak + 1e-12);
    }

    @Test
    void theFitByHand() {
        // k0 = 10/1000 = 0.01, √k0 = 0.1; 1/0.9 − 1/0.95 = 0.0584795, root 0.2418254; √k2 = 0.3418254, k2 = 0.1168446
        // k1 = 1/0.95 − 1 − 2 · 0.1 · 0.3418254 = 0.0526316 − 0.0683651 = −0.0157335
        InverterCurve curve = InverterCurve.fit(KILOWATT, Power.watts(10), Ratio.of(0.95), Ratio.of(0.9));

        assertThat(curve.k0().fraction()).isCloseTo(0.01, within(1e-12));
        assertThat(curve.k1().fraction()).isCloseTo(-0.0157335, within(1e-6));
        assertThat(curve.k2().fraction()).isCloseTo(0.1168446, within(1e-6));
    }

    @Test
    void aFullLoadMoreEfficientThanThePeakContradictsItself() {
        assertThatThrownBy(() -> InverterCurve.fit(KILOWATT, Power.watts(10), Ratio.of(0.9), Ratio.of(0.95)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("peakEfficiency 0.9 must not be below fullLoadEfficiency 0.95");
    }

    @Test
    void anIdleDrawTooLargeForThePeakIsTold() {
        // k0 = 0.2: √k2 = √0.2 + √(1/0.9 − 1/0.94) = 0.6646, k1 = 1/0.94 − 1 − 2 · 0.4472 · 0.6646 = −0.53: under −0.5
        assertThatThrownBy(() -> InverterCurve.fit(KILOWATT, Power.watts(200), Ratio.of(0.94), Ratio.of(0.9)))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .singleElement()
                                .satisfies(problem -> assertThat(problem.path()).isEqualTo("/idle")))
                .hasMessage("idle 200 W is too much for a peak efficiency of 0.94");
        // k0 = 0.15: √k2 = 0.3873 + 0.2174 = 0.6047, k1 = 0.0638 − 2 · 0.3873 · 0.6047 = −0.4046
        assertThat(InverterCurve.fit(KILOWATT, Power.watts(150), Ratio.of(0.94), Ratio.of(0.9))
                        .k1()
                        .fraction())
                .isCloseTo(-0.4046, within(1e-4));
    }

    @Test
    void oneStatedEfficiencyAndOneIdleDraw() {
        InverterCurve stated = InverterCurve.stated(KILOWATT, Ratio.of(0.008), Ratio.of(0.92));

        // 8 W + 460 W / 0.92 = 508 W
        assertThat(stated.drawFor(Power.watts(460)).watts()).isCloseTo(508, within(1e-9));
    }

    @Test
    void switchingOnAndOffLosesMoreThanTheMeanPowerWould() {
        // 1000 W a quarter of the time: mean 250 W, variance 1000² · 0.25 · 0.75 = 187500 W².
        // On: 1000 + 10 + 20 + 50 = 1080 W; off: 10 W; mean 0.25 · 1080 + 0.75 · 10 = 277.5 W
        assertThat(SCHMIDT_SAUER.drawWatts(250, 187_500)).isCloseTo(277.5, within(1e-9));
        // averaged before squaring: 250 + 10 + 5 + 0.05 · 62.5 = 268.125 W
        assertThat(SCHMIDT_SAUER.drawWatts(250, 0)).isCloseTo(268.125, within(1e-9));
    }

    @Test
    void refusesWhatNoInverterIs() {
        assertThatThrownBy(() -> new InverterCurve(Power.ZERO, Ratio.of(-0.1), Ratio.of(-0.6), Ratio.of(-1)))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path())
                                .containsExactly("/rating", "/k0", "/k1", "/k2"));
    }
}
