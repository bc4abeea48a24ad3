package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.assertj.core.api.Assertions;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.Place;
import org.daybank.core.site.UtcOffset;
import org.junit.jupiter.api.Test;

class SunTimesTest {
    private static Place place(double latitude, double longitude, double hours) {
        return new Place(Latitude.degrees(latitude), Longitude.degrees(longitude), UtcOffset.hours(hours), null);
    }

    @Test
    void midsummerInLondon() {
        // almanacs: 21 June 2000, London (51.51° N, 0.13° W), sunrise 04:43, sunset 21:22 by a clock one hour ahead
        SunTimes times = SunTimes.on(LocalDate.of(2000, 6, 21), place(51.51, -0.13, 0));

        assertThat(times.sunrise().orElseThrow())
                .isCloseTo(Instant.parse("2000-06-21T03:43:00Z"), Assertions.within(1, ChronoUnit.MINUTES));
        assertThat(times.sunset().orElseThrow())
                .isCloseTo(Instant.parse("2000-06-21T20:21:30Z"), Assertions.within(1, ChronoUnit.MINUTES));
    }

    @Test
    void theSunStandsWhereItIsSeenToRise() {
        for (double latitude = -65; latitude <= 65; latitude += 13) {
            for (int month = 1; month <= 12; month++) {
                Place place = place(latitude, 170, 12.5);
                SunTimes times = SunTimes.on(LocalDate.of(2030, month, 20), place);

                // 90.833°, and 0.0024° of parallax that the times leave out
                assertThat(SolarPosition.at(place, times.sunrise().orElseThrow())
                                .zenith()
                                .degrees())
                        .isCloseTo(90.833, within(0.003));
                assertThat(SolarPosition.at(place, times.sunset().orElseThrow())
                                .zenith()
                                .degrees())
                        .isCloseTo(90.833, within(0.003));
                assertThat(SolarPosition.at(place, times.noon()).hourAngle().degrees())
                        .isCloseTo(0, within(1e-4));
                assertThat(times.sunrise().orElseThrow()).isBefore(times.noon());
                assertThat(Duration.between(
                                                times.sunrise().orElseThrow(),
                                                times.sunset().orElseThrow())
                                        .toMillis()
                                / 3.6e6)
                        .isCloseTo(times.dayLength().hours(), within(1e-6));
                // noon falls into the day by the clock of the place
                assertThat(times.noon()
                                .atOffset(ZoneOffset.ofHoursMinutes(12, 30))
                                .toLocalDate())
                        .isEqualTo(times.date());
            }
        }
    }

    @Test
    void polarDayAndNightHaveNoSunrise() {
        SunTimes night = SunTimes.on(LocalDate.of(2024, 12, 21), place(75, 20, 1));
        SunTimes day = SunTimes.on(LocalDate.of(2024, 6, 21), place(75, 20, 1));

        assertThat(night.sunrise()).isEmpty();
        assertThat(night.dayLength()).isEqualTo(TimeSpan.ZERO);
        assertThat(day.sunset()).isEmpty();
        assertThat(day.dayLength()).isEqualTo(TimeSpan.hours(24));
    }
}
