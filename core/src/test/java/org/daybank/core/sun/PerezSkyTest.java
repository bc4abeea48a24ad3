package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PerezSkyTest {
    @Test
    void anOvercastSkyIsInTheFirstBin() {
        // no beam: ε = (1 + κz³) / (1 + κz³) = 1
        assertThat(PerezSky.clearness(200, 0, 0.8)).isEqualTo(1);
        assertThat(PerezSky.bin(1)).isZero();
        // 1990, table 6, first row to three digits: F11 −0.008, F12 0.588, F13 −0.062
        assertThat(PerezSky.circumsolar(0, 0.5, 0.8)).isCloseTo(-0.008 + 0.588 * 0.5 - 0.062 * 0.8, within(1e-3));
    }

    @Test
    void aClearSkyIsInALaterBin() {
        // ε = ((100 + 700) / 100 + 1.041 · 0.8³) / (1 + 1.041 · 0.8³) = (8 + 0.53299) / 1.53299 = 5.566: the seventh
        // bin
        double clearness = PerezSky.clearness(100, 700, 0.8);
        assertThat(clearness).isCloseTo(5.566, within(1e-3));
        int bin = PerezSky.bin(clearness);
        // 1990, table 6, seventh row: 1.060, −1.600, −0.359; 0.264, −1.127, 0.131
        assertThat(PerezSky.circumsolar(bin, 0.1, 0.8)).isCloseTo(1.060 - 1.600 * 0.1 - 0.359 * 0.8, within(1e-3));
        assertThat(PerezSky.horizon(bin, 0.1, 0.8)).isCloseTo(0.264 - 1.127 * 0.1 + 0.131 * 0.8, within(1e-3));
        assertThat(PerezSky.bin(Double.POSITIVE_INFINITY)).isEqualTo(42);
    }

    @Test
    void airMassOfKastenAndYoung() {
        // 1 / (cos 60° + 0.50572 · 36.07995^−1.6364) = 1.9943; at the horizon 37.92
        assertThat(PerezSky.airMass(Math.PI / 3, 0.5)).isCloseTo(1.9943, within(1e-4));
        assertThat(PerezSky.airMass(Math.PI / 2, 0)).isCloseTo(37.92, within(0.02));
    }

    @Test
    void zenithAngleOfACosine() {
        for (double cosine = 0; cosine <= 1; cosine += 0.01) {
            assertThat(PerezSky.zenith(cosine)).isCloseTo(Math.acos(cosine), within(3e-8));
        }
    }
}
