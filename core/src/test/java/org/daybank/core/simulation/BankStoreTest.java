package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BankStoreTest {
    /** c = 0.3, k = 0.6 1/h: the order of published fits for lead-acid. */
    private static final double C = 0.3;

    private static final double K = 0.6;

    private final BankStore store = new BankStore(1000, new KineticWells(Ratio.of(C), K));

    /**
     * The two differential equations of Manwell and McGowan (1993), dq₁/dt = −I − k·(1 − c)·q₁ + k·c·q₂ and dq₂/dt = k·(1 −
     * c)·q₁ − k·c·q₂, in a hundred thousand small steps (fourth order): what is at hand after one hour.
     */
    private static double availableAfterAnHour(double q1, double q2, double out) {
        int steps = 100_000;
        double h = 1.0 / steps;
        double held = q1 + q2;
        double at = q1;
        for (int i = 0; i < steps; i++) {
            // the sum falls in a straight line, so that one equation is enough
            double t = i * h;
            double a = slope(at, held - out * t, out);
            double b = slope(at + h / 2 * a, held - out * (t + h / 2), out);
            double c = slope(at + h / 2 * b, held - out * (t + h / 2), out);
            double d = slope(at + h * c, held - out * (t + h), out);
            at += h / 6 * (a + 2 * b + 2 * c + d);
        }
        return at;
    }

    private static double slope(double q1, double held, double out) {
        return -out - K * (1 - C) * q1 + K * C * (held - q1);
    }

    @ParameterizedTest
    @CsvSource({"1, 200", "0.5, 100", "0.9, -150", "0.2, 0"})
    void theWellsFollowTheirDifferentialEquations(double filled, double out) {
        store.fill(filled);
        double expected = availableAfterAnHour(C * 1000 * filled, (1 - C) * 1000 * filled, out);

        store.move(out);

        assertThat(store.level()).isCloseTo(1000 * filled - out, within(1e-9));
        // what is at hand shows in what can be drawn: the largest draw of the next hour empties it exactly
        double most = store.mostOut();
        assertThat(availableAfterAnHour(expected, store.level() - expected, most))
                .isCloseTo(0, within(1e-6));
    }

    /** By hand: a full bank gives no more than 363 Wh in the first hour. */
    @Test
    void aFullBankGivesLessThanItHolds() {
        store.fill(1);

        // e^−0.6 = 0.548812; (0.6·300·0.548812 + 1000·0.6·0.3·0.451188) / (0.451188 + 0.3·(0.6 − 1 + 0.548812))
        //   = (98.786 + 81.214) / (0.451188 + 0.044644) = 180 / 0.495832 = 363.03
        assertThat(store.mostOut()).isCloseTo(363.03, within(0.01));
    }

    @Test
    void aBankDrawnHardRecovers() {
        store.fill(1);
        store.move(store.mostOut());
        double atOnce = store.mostOut();

        store.move(0);

        assertThat(store.mostOut()).isGreaterThan(1.2 * atOnce);
    }

    @Test
    void theLargestChargeFillsTheWellAtHand() {
        store.fill(0.2);
        double most = store.mostIn();

        store.move(-most);

        // full well at hand: nothing more goes in at once but what flows over, which the other formula says as well
        double available = availableAfterAnHour(C * 200, (1 - C) * 200, -most);
        assertThat(available).isCloseTo(C * 1000, within(1e-6));
    }
}
