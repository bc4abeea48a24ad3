package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ErbsTest {
    @Test
    void monthlyFractionsOfThePublishedPolynomials() {
        // 1.391 − 3.560 · 0.5 + 4.189 · 0.25 − 2.137 · 0.125 = 0.391125
        assertThat(Erbs.monthly(0.5, Math.toRadians(81.4))).isCloseTo(0.391125, within(1e-12));
        // 1.311 − 3.022 · 0.5 + 3.427 · 0.25 − 1.821 · 0.125 = 0.429125
        assertThat(Erbs.monthly(0.5, Math.toRadians(81.5))).isCloseTo(0.429125, within(1e-12));
    }

    @Test
    void aDarkMonthIsAllDiffuse() {
        assertThat(Erbs.monthly(0.05, Math.toRadians(70))).isEqualTo(1);
        assertThat(Erbs.monthly(0, Math.toRadians(100))).isEqualTo(1);
    }
}
