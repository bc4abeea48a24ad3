package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SyntheticWeatherTest {
    /** Larkspur Ridge. */
    private static final Site RIDGE = Sites.withIrradiation(
            46.87,
            IntStream.of(132, 218, 345, 451, 547, 602, 618, 529, 394, 246, 144, 109)
                    .mapToObj(hundredths -> Irradiation.kilowattHoursPerSquareMetre(hundredths / 100.0))
                    .toList());

    private static WeatherYear year(Site site, long seed, int number) {
        return SyntheticWeather.year(site, seed, number, SunPolicy.standard(), SyntheticPolicy.standard());
    }

    private static HourlySeries global(WeatherYear weather) {
        return Objects.requireNonNull(weather.global());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, -77})
    void everyMonthKeepsItsMeans(long seed) {
        MonthlyClimate months = year(RIDGE, seed, 5).months();

        for (int i = 0; i < 12; i++) {
            double given = Objects.requireNonNull(RIDGE.months().dailyIrradiation())
                    .get(i)
                    .kilowattHoursPerSquareMetre();
            assertThat(Objects.requireNonNull(months.dailyIrradiation()).get(i).kilowattHoursPerSquareMetre())
                    .isCloseTo(given, within(0.001 * given));
            assertThat(months.meanAir().get(i).celsius())
                    .isCloseTo(RIDGE.months().meanAir().get(i).celsius(), within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-90, -69.65, -35, 0, 23.4, 60, 66.5, 78, 90})
    void everyLatitudeHasItsYear(double latitude) {
        Site site = Sites.withClearness(latitude, 0.5);
        double made = global(year(site, 1, 0)).sum(0, 8760) / 1000;

        double given = PlaneOfArray.monthly(
                        site, Plane.facingEquator(site.latitude(), Angle.ZERO), SunPolicy.standard())
                .yearly()
                .kilowattHoursPerSquareMetre();
        assertThat(made).isCloseTo(given, within(0.001 * given));
    }

    @Test
    void theSameSeedGivesTheSameYear() {
        assertThat(year(RIDGE, 42, 3)).isEqualTo(year(RIDGE, 42, 3));
        assertThat(global(year(RIDGE, 42, 3))).isNotEqualTo(global(year(RIDGE, 42, 4)));
        assertThat(global(year(RIDGE, 42, 3))).isNotEqualTo(global(year(RIDGE, 43, 3)));
    }

    @Test
    void noHourPassesWhatTheSunSendsOrTheRecords() {
        WeatherYear weather = year(RIDGE, 9, 0);
        SunPath path = SunPath.of(weather.place(), weather.calendar(), SunPolicy.standard());
        HourlySeries air = Objects.requireNonNull(weather.air());

        for (int hour = 0; hour < 8760; hour++) {
            double sent = path.normalExtraterrestrial[hour / 24] * Math.max(0, path.up[hour]);
            assertThat(global(weather).at(hour)).isBetween(0.0, 0.951 * sent + 1e-9);
        }
        assertThat(air.least()).isGreaterThanOrEqualTo(RIDGE.recordLow().celsius());
        assertThat(air.most()).isLessThanOrEqualTo(RIDGE.resolved().recordHigh().celsius());
    }

    @Test
    void dullDaysFollowDullDays() {
        // measured daily clearness follows itself with a correlation of 0.15 to 0.35 (Aguiar and others 1988, table 3)
        double sum = 0;
        for (int number = 0; number < 20; number++) {
            sum += followingDays(dailySums(year(Sites.withClearness(0, 0.5), 11, number)));
        }

        assertThat(sum / 20).isBetween(0.1, 0.4);
    }

    @Test
    void clearDaysSwingWider() {
        WeatherYear weather = year(Sites.withClearness(0, 0.5), 5, 0);
        HourlySeries air = Objects.requireNonNull(weather.air());
        double[] sums = dailySums(weather);
        double middle = Arrays.stream(sums).sorted().toArray()[182];
        double clear = 0;
        double dull = 0;
        for (int day = 0; day < 365; day++) {
            double swing = air.at(day * 24 + 14) - air.at(day * 24 + 4);
            clear += sums[day] > middle ? swing / 182 : 0;
            dull += sums[day] < middle ? swing / 182 : 0;
        }

        assertThat(clear).isGreaterThan(dull + 2);
        // the afternoon is the warm part
        assertThat(dull).isPositive();
    }

    private static double[] dailySums(WeatherYear weather) {
        return IntStream.range(0, 365)
                .mapToDouble(day -> global(weather).sum(day * 24, day * 24 + 24))
                .toArray();
    }

    private static double followingDays(double[] days) {
        double mean = Arrays.stream(days).average().orElseThrow();
        double together = 0;
        double alone = 0;
        for (int day = 1; day < days.length; day++) {
            together += (days[day] - mean) * (days[day - 1] - mean);
            alone += (days[day] - mean) * (days[day] - mean);
        }
        return together / alone;
    }

    @Test
    void moreThanTheClearestDaysBringIsRefused() {
        List<Irradiation> clear = PlaneOfArray.monthly(
                        Sites.withClearness(0, 0.9), new Plane(Angle.ZERO, Angle.ZERO), SunPolicy.standard())
                .months()
                .stream()
                .map(month -> month.horizontal().times(1.1))
                .toList();

        assertThatThrownBy(() -> year(Sites.withIrradiation(0, clear), 1, 0))
                .hasMessageContaining("more than the clearest days bring");
    }

    /** Mean clearness to which each published matrix settles, reckoned apart from the printed digits. */
    @Test
    void matricesSettleWherePublished() {
        double[] settled = {.241, .334, .374, .429, .476, .526, .575, .620, .668, .728};

        for (int i = 0; i < settled.length; i++) {
            TransitionMatrix matrix = TransitionMatrix.PUBLISHED.get(i);
            double[] chances = new double[TransitionMatrix.STATES];
            chances[0] = 1;
            for (int day = 0; day < 500; day++) {
                double[] next = new double[chances.length];
                for (int from = 0; from < chances.length; from++) {
                    for (int to = 0; to < chances.length; to++) {
                        next[to] += chances[from] * matrix.chance(from, to);
                    }
                }
                chances = next;
            }
            double mean = 0;
            for (int state = 0; state < chances.length; state++) {
                mean += chances[state] * (matrix.least + (state + 0.5) * (matrix.most - matrix.least) / chances.length);
            }
            assertThat(mean).isCloseTo(settled[i], within(0.001));
        }
    }

    @Test
    void theMatrixGoesByTheMonthsMean() {
        assertThat(TransitionMatrix.of(0.3)).isSameAs(TransitionMatrix.PUBLISHED.get(0));
        assertThat(TransitionMatrix.of(0.31)).isSameAs(TransitionMatrix.PUBLISHED.get(1));
        assertThat(TransitionMatrix.of(0.9)).isSameAs(TransitionMatrix.PUBLISHED.get(9));
    }

    @Test
    void policyIsBounded() {
        assertThatThrownBy(() -> SyntheticPolicy.standard().withAirPersistence(Ratio.ONE))
                .hasMessageContaining("airPersistence must be from 0 to 0.99, but was 1.");
    }
}
