package org.daybank.core.sweep.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalQuantileTest {
    /** The check values that Wichura 1988 prints for PPND16; his fourth, for 10⁻²⁰, lies below the least that is drawn. */
    @Test
    void itGivesTheCheckValuesOfThePaper() {
        assertThat(NormalQuantile.of(0.25)).isEqualTo(-0.6744897501960817, within(1e-15));
        assertThat(NormalQuantile.of(0.001)).isEqualTo(-3.090232306167814, within(4e-15));
        assertThat(NormalQuantile.of(0.5)).isZero();
    }

    /** Two-sided 95 % and 99.9999 % points from tables of the normal distribution, to the digits printed there. */
    @Test
    void itGivesTheValuesOfTables() {
        assertThat(NormalQuantile.of(0.975)).isEqualTo(1.959963984540054, within(1e-14));
        assertThat(NormalQuantile.of(1 - 5e-7)).isEqualTo(4.891638475699, within(1e-8));
    }

    @Test
    void itIsOddAboutTheMedianAndFiniteAtTheEnds() {
        for (double unit : new double[] {0.0625, 0.125, 0.375, 0x1p-20}) {
            assertThat(NormalQuantile.of(1 - unit)).isEqualTo(-NormalQuantile.of(unit), within(1e-12));
        }
        // by the asymptotic series of the tail, x ≈ √(2 ln(1 / (p x √(2π)))) at p = 2⁻⁵⁴: about −8.29
        assertThat(NormalQuantile.of(0)).isBetween(-8.4, -8.2);
    }
}
