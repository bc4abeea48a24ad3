package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** Erbs, Klein and Duffie 1982, the three branches of the hourly correlation. */
    @ParameterizedTest
    @CsvSource({
        // 1 − 0.09 · K up to 0.22
        "0, 1",
        "0.1, 0.991",
        "0.22, 0.9802",
        // 0.9511 − 0.1604 · 0.5 + 4.388 · 0.25 − 16.638 · 0.125 + 12.336 · 0.0625 = 0.65915
        "0.5, 0.65915",
        // 0.9511 − 0.1604 · 0.8 + 4.388 · 0.64 − 16.638 · 0.512 + 12.336 · 0.4096 = 0.1652696
        "0.8, 0.1652696",
        // clear beyond it
        "0.81, 0.165",
        "1, 0.165"
    })
    void hourlyFractionsOfThePublishedBranches(double clearness, double share) {
        assertThat(Erbs.hourly(clearness)).isCloseTo(share, within(1e-7));
    }
}
