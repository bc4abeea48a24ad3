package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CoverTest {
    @Test
    void glassAtSixtyDegrees() {
        // Duffie and Beckman, example 5.1.1: one surface of glass with n = 1.526 throws back 0.0434 of straight light
        // and
        // 0.093 at 60°. Refracted cosine √(1 − 0.75 / 1.526²) = 0.8234, absorption exp(−0.008 · (1 / 0.8234 − 1)) =
        // 0.9983:
        // (1 − 0.093) / (1 − 0.0434) · 0.9983 = 0.9465; 0.093 is printed to three digits
        assertThat(Cover.GLASS.admitted(0.5)).isCloseTo(0.9465, within(6e-4));
        assertThat(Cover.GLASS.admitted(1)).isEqualTo(1);
        assertThat(Cover.GLASS.admitted(0)).isZero();
        assertThat(Cover.NONE.admitted(0.1)).isEqualTo(1);
    }

    @Test
    void lightOfTheSkyCountsAsBeamAtSixtyDegrees() {
        // Brandemuehl and Beckman on the horizontal: 59.7° for the sky, 90° for the ground, which it does not see
        assertThat(Cover.GLASS.skyAdmitted(0))
                .isCloseTo(Cover.GLASS.admitted(Math.cos(Math.toRadians(59.7))), within(1e-12));
        assertThat(Cover.GLASS.groundAdmitted(0)).isCloseTo(0, within(1e-9));
    }
}
