package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

class DarkHoursTest {
    @Test
    void onTheEquatorTheSunShinesFromSixToSix() {
        List<Ratio> june = DarkHours.at(Latitude.degrees(0)).in(Month.JUNE);

        assertThat(june).hasSize(24);
        assertThat(june.get(5).fraction()).isCloseTo(1, within(1e-12));
        assertThat(june.get(6).fraction()).isCloseTo(0, within(1e-12));
        assertThat(june.get(17).fraction()).isCloseTo(0, within(1e-12));
        assertThat(june.get(18).fraction()).isCloseTo(1, within(1e-12));
    }

    @Test
    void anHourInWhichTheSunRisesIsPartlyDark() {
        // Larkspur Ridge, 46.87° N, December δ = −23.05°: cos ω_s = tan 46.87° · tan 23.05° = 0.45426, ω_s = 62.982°,
        // sunrise at 12 − 62.982 / 15 = 7.8012: the hour from seven is 0.8012 dark
        List<Ratio> december = DarkHours.at(Latitude.degrees(46.87)).in(Month.DECEMBER);

        assertThat(december.get(7).fraction()).isCloseTo(0.8012, within(5e-4));
        assertThat(december.get(16).fraction()).isCloseTo(december.get(7).fraction(), within(1e-12));
        assertThat(december.get(6)).isEqualTo(Ratio.ONE);
        assertThat(december.get(12)).isEqualTo(Ratio.ZERO);
    }

    @Test
    void polarDayAndNight() {
        DarkHours pole = DarkHours.at(Latitude.degrees(-90));

        assertThat(pole.in(Month.JUNE)).isEqualTo(Collections.nCopies(24, Ratio.ONE));
        assertThat(pole.in(Month.DECEMBER)).isEqualTo(Collections.nCopies(24, Ratio.ZERO));
    }
}
