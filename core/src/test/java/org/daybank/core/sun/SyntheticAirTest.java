package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.junit.jupiter.api.Test;

/** Made-up air on days that do not wander: what is left is the season and the course of the day. */
class SyntheticAirTest {
    private static final HourCalendar CALENDAR = new HourCalendar(2025, HourCalendar.COMMON);
    private static final SyntheticPolicy STEADY = SyntheticPolicy.standard()
            .withAirSpread(TemperatureDifference.kelvins(0))
            .withSwingCoefficient(Ratio.of(0.17));

    private static Site site(double low, double high, Double... monthlyMeans) {
        return SiteBuilder.builder()
                .latitude(Latitude.degrees(45))
                .recordLow(Temperature.celsius(low))
                .recordHigh(Temperature.celsius(high))
                .months(MonthlyClimateBuilder.builder()
                        .clearness(List.of(Ratio.of(0.5)))
                        .meanAir(Arrays.stream(monthlyMeans)
                                .map(Temperature::celsius)
                                .toList())
                        .build())
                .build();
    }

    private static double[] air(Site site, double clearness) {
        double[] days = new double[365];
        Arrays.fill(days, clearness);
        return new SyntheticAir(site, CALENDAR, STEADY).celsius(days, new Dice(1, 1));
    }

    private static Double[] tenAllYear() {
        return Collections.nCopies(12, 10.0).toArray(Double[]::new);
    }

    private static double[] day(double[] air, int day) {
        return Arrays.copyOfRange(air, 24 * day, 24 * day + 24);
    }

    private static double mean(double[] hours) {
        return Arrays.stream(hours).average().orElseThrow();
    }

    private static double swing(double[] hours) {
        return Arrays.stream(hours).max().orElseThrow()
                - Arrays.stream(hours).min().orElseThrow();
    }

    /** By Hargreaves √ΔT = 0.51 / 0.17 = 3, ΔT = 9 K; the course is made so that its ends lie that far apart. */
    @Test
    void aDaySwingsByItsClearnessAroundItsMean() {
        double[] day = day(air(site(-30, 45, tenAllYear()), 0.51), 100);

        assertThat(mean(day)).isEqualTo(10, within(1e-9));
        assertThat(swing(day)).isEqualTo(9, within(0.05 * 9));
        int warmest =
                IntStream.range(0, 24).reduce((a, b) -> day[b] > day[a] ? b : a).orElseThrow();
        int coldest =
                IntStream.range(0, 24).reduce((a, b) -> day[b] < day[a] ? b : a).orElseThrow();
        assertThat(warmest).as("in the afternoon").isBetween(13, 16);
        assertThat(coldest).as("before sunrise").isBetween(3, 6);
        // it cools for longer than it warms
        assertThat((warmest - coldest + 24) % 24).isLessThan(12);
    }

    /** 0.1 / 0.17 gives 0.35 K, taken as 1 K; 0.95 / 0.17 gives 31 K, taken as 25 K. */
    @Test
    void swingsHaveTheirBounds() {
        assertThat(swing(day(air(site(-60, 60, tenAllYear()), 0.1), 100))).isEqualTo(1, within(0.05));
        assertThat(swing(day(air(site(-60, 60, tenAllYear()), 0.95), 100))).isEqualTo(25, within(1.25));
    }

    @Test
    void noHourPassesTheRecords() {
        double[] air = air(site(4, 13, tenAllYear()), 0.7);
        assertThat(Arrays.stream(air).min().orElseThrow()).isGreaterThanOrEqualTo(4 - 1e-9);
        assertThat(Arrays.stream(air).max().orElseThrow()).isEqualTo(13, within(1e-9));
        assertThat(mean(day(air, 200))).isEqualTo(10, within(1e-9));
    }

    /**
     * Means that rise by 2 K a month to July and fall as evenly: in the middle of April it is as warm as its mean, 6 °C, at its
     * beginning halfway from March's 4 °C, at its end halfway to May's 8 °C. Each month keeps its mean.
     */
    @Test
    void theSeasonGoesStraightFromMonthToMonth() {
        double[] air = air(site(-40, 45, 0.0, 2.0, 4.0, 6.0, 8.0, 10.0, 12.0, 10.0, 8.0, 6.0, 4.0, 2.0), 0.34);
        int april = CALENDAR.firstHour(Month.APRIL) / 24;

        assertThat(mean(day(air, april + 15))).isEqualTo(6, within(0.1));
        assertThat((mean(day(air, april - 1)) + mean(day(air, april))) / 2).isEqualTo(5, within(0.1));
        assertThat((mean(day(air, april + 29)) + mean(day(air, april + 30))) / 2)
                .isEqualTo(7, within(0.1));
        assertThat(mean(day(air, april + 22)) - mean(day(air, april + 7)))
                .as("half a month apart")
                .isEqualTo(1, within(0.05));
        for (Month month : Month.values()) {
            double[] hours = Arrays.copyOfRange(air, CALENDAR.firstHour(month), CALENDAR.endHour(month));
            assertThat(mean(hours))
                    .isEqualTo(
                            2 * (month.getValue() <= 7 ? month.getValue() - 1 : 13 - month.getValue()), within(1e-9));
        }
    }
}
