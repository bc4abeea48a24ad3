package org.daybank.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Month;
import java.util.Arrays;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class WeatherYearTest {
    static WeatherYear steady(double irradiance, double celsius) {
        double[] sun = new double[8760];
        Arrays.fill(sun, irradiance);
        double[] air = new double[8760];
        Arrays.fill(air, celsius);
        return year().global(HourlySeries.wattsPerSquareMetre(sun))
                .direct(HourlySeries.wattsPerSquareMetre(sun))
                .diffuse(HourlySeries.wattsPerSquareMetre(sun))
                .air(HourlySeries.celsius(air))
                .wind(HourlySeries.metresPerSecond(sun))
                .build();
    }

    static WeatherYear dim() {
        return steady(10, 5);
    }

    static WeatherYear bright() {
        return steady(90, 15);
    }

    private static final Place PLACE =
            new Place(Latitude.degrees(46.87), Longitude.degrees(-113.5), UtcOffset.hours(-7), null);

    private static WeatherYearBuilder year() {
        return WeatherYearBuilder.builder().place(PLACE).year(2001);
    }

    @Test
    void globalOrDirectAndDiffuseIsNeeded() {
        assertThatThrownBy(() -> year().direct(HourlySeries.wattsPerSquareMetre(new double[8760]))
                        .build())
                .hasMessageContaining("global is required, or direct and diffuse in its place.");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        double[] global = new double[8760];
        global[7] = -4;
        assertThatThrownBy(() -> WeatherYearBuilder.builder()
                        .year(1900)
                        .global(HourlySeries.wattsPerSquareMetre(global))
                        .air(HourlySeries.celsius(new double[8759]))
                        .wind(HourlySeries.celsius(new double[8760]))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/place MISSING",
                                        "/year OUT_OF_RANGE",
                                        "/global/7 OUT_OF_RANGE",
                                        "/air INCONSISTENT",
                                        "/wind INCONSISTENT"));
    }

    @Test
    void aCommonYearHasNoLeapDay() {
        assertThatThrownBy(() -> year().global(HourlySeries.wattsPerSquareMetre(new double[8784]))
                        .build())
                .hasMessageContaining("2001 is no leap year but has 8784 hours");
        assertThatThrownBy(() -> year().global(HourlySeries.wattsPerSquareMetre(new double[100]))
                        .build())
                .hasMessageContaining("a year has 8760 or 8784 hours but here are 100");
    }

    @Test
    void theCalendarFollowsTheMonths() {
        HourCalendar common = new HourCalendar(2001, 8760);

        assertThat(common.firstHour(Month.MARCH)).isEqualTo(59 * 24);
        assertThat(common.endHour(Month.DECEMBER)).isEqualTo(8760);
        assertThat(common.date(364)).hasToString("2001-12-31");
        assertThat(common.words(5 * 24 + 2)).isEqualTo("6 January, 02:00–03:00");
    }

    @Test
    void offsetsHaveHalfHours() {
        assertThat(UtcOffset.parse("-03:30").hours()).isEqualTo(-3.5);
        assertThat(UtcOffset.parse("5.75")).hasToString("+05:45");
        assertThat(UtcOffset.parse(UtcOffset.hours(-9.5).toString())).isEqualTo(UtcOffset.hours(-9.5));
        assertThatThrownBy(() -> UtcOffset.parse("15:00"))
                .hasMessageContaining("must be from -12:00 to +14:00, but was +15:00.");
        assertThatThrownBy(() -> UtcOffset.parse("CET"))
                .hasMessageContaining("write hours and minutes, as in '+05:30' or '-7'");
    }

    @Test
    void numbersThatAreNoneCannotEnter() {
        assertThatThrownBy(() -> HourlySeries.celsius(1, Double.NaN))
                .hasMessageContaining("Hour 1 must be a finite number of °C, but was NaN.");
    }

    @Test
    void aLeapYearGivenWithoutItsDaySkipsIt() {
        HourCalendar skipping = new HourCalendar(2020, 8760);

        assertThat(skipping.date(58)).hasToString("2020-02-28");
        assertThat(skipping.date(59)).hasToString("2020-03-01");
        assertThat(new HourCalendar(2020, 8784).date(59)).hasToString("2020-02-29");
        assertThatThrownBy(() -> new HourCalendar(2021, 8784)).hasMessageContaining("2021 is no leap year");
        assertThatThrownBy(() -> new HourCalendar(2021, 24)).hasMessageContaining("8760 or 8784 hours but here are 24");
    }

    @Test
    void seriesAreEqualByUnitAndNumbers() {
        HourlySeries air = HourlySeries.celsius(1, 2, 4);

        assertThat(air).isEqualTo(HourlySeries.celsius(1, 2, 4)).hasSameHashCodeAs(HourlySeries.celsius(1, 2, 4));
        assertThat(air).isNotEqualTo(HourlySeries.metresPerSecond(1, 2, 4)).isNotEqualTo(HourlySeries.celsius(1, 2));
        assertThat(air.mean(1, 3)).isEqualTo(3);
        assertThat(air).hasToString("3 hours in °C");
        double[] copy = air.values();
        copy[0] = 100;
        assertThat(air.at(0)).isEqualTo(1);
    }

    @Test
    void directAndDiffuseStandInForGlobal() {
        HourlySeries dark = HourlySeries.wattsPerSquareMetre(new double[8760]);

        assertThat(year().direct(dark).diffuse(dark).build().hours()).isEqualTo(8760);
        assertThatThrownBy(() -> year().diffuse(dark).build())
                .hasMessageContaining("global is required, or direct and diffuse in its place.");
        assertThatThrownBy(() -> year().direct(dark).diffuse(dark).build().months())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("global is required. air is required.");
    }

    @Test
    void noMoreSunThanThereIsOutsideTheAir() {
        // 1361 · 1.01 = 1374.61 W/m²; on the first of January · (1 + 0.033 · cos(2π / 365)) = 1420 W/m², on the first
        // of
        // July, the 182nd day, · (1 + 0.033 · cos(2π · 182 / 365)) = 1329 W/m²
        double[] direct = new double[8760];
        direct[12] = 1400;
        direct[181 * 24 + 12] = 1329;
        assertThat(year().global(HourlySeries.wattsPerSquareMetre(new double[8760]))
                        .direct(HourlySeries.wattsPerSquareMetre(direct))
                        .build()
                        .hours())
                .isEqualTo(8760);
        direct[12] = 1421;
        direct[181 * 24 + 12] = 1330;
        assertThatThrownBy(() -> year().global(HourlySeries.wattsPerSquareMetre(new double[8760]))
                        .direct(HourlySeries.wattsPerSquareMetre(direct))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "hour 12: direct is 1421 W/m², more than the 1420 W/m² that the sun sends outside the air on that day. "
                                + "hour 4356: direct is 1330 W/m², more than the 1329 W/m² that the sun sends outside the air on that day.");
    }

    @Test
    void ofASeriesTheFirstFiftyProblemsAreTold() {
        double[] global = new double[8760];
        Arrays.fill(global, 0, 60, -1);

        assertThatThrownBy(() ->
                        year().global(HourlySeries.wattsPerSquareMetre(global)).build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems()).hasSize(50));
    }

    @Test
    void valuesAtTheirLimitsAreTaken() {
        double[] global = new double[8760];
        global[12] = 1500;
        double[] air = new double[8760];
        air[0] = -90;
        air[1] = 60;
        assertThat(year().global(HourlySeries.wattsPerSquareMetre(global))
                        .air(HourlySeries.celsius(air))
                        .build()
                        .site()
                        .recordLow()
                        .celsius())
                .isEqualTo(-90);
        air[1] = 60.5;
        assertThatThrownBy(() -> year().global(HourlySeries.wattsPerSquareMetre(global))
                        .air(HourlySeries.celsius(air))
                        .build())
                .hasMessage("hour 1: air must be from -90 to 60 °C, but was 60.5.");
        // marks of a missing value that weather files use
        air[1] = 999;
        global[12] = 9999;
        global[13] = -999;
        assertThatThrownBy(() -> year().global(HourlySeries.wattsPerSquareMetre(global))
                        .air(HourlySeries.celsius(air))
                        .build())
                .hasMessage("hour 12: global is 9999, which marks a missing value. "
                        + "hour 13: global is -999, which marks a missing value. "
                        + "hour 1: air is 999, which marks a missing value.");
    }

    @Test
    void daysOfAYear() {
        assertThat(new HourCalendar(2001, 8760).days()).isEqualTo(365);
        assertThat(new HourCalendar(2020, 8784).days()).isEqualTo(366);
    }

    @Test
    void aPlaceHasAllItsParts() {
        assertThatThrownBy(() -> new Place(null, null, null, Length.metres(9001)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("latitude is required. longitude is required. utcOffset is required. "
                        + "elevation must be from -430 m to 9 km, but was 9.001 km.");
    }

    @Test
    void offsetsReachFromTheDateLineToTheDateLine() {
        assertThat(UtcOffset.parse("-12:00")).isLessThan(UtcOffset.parse("+14:00"));
        assertThat(UtcOffset.hours(0)).hasToString("+00:00");
        assertThatThrownBy(() -> UtcOffset.parse("-12:01"))
                .hasMessage("A UTC offset must be from -12:00 to +14:00, but was -12:01.");
        assertThatThrownBy(() -> UtcOffset.parse("+14:01"))
                .hasMessage("A UTC offset must be from -12:00 to +14:00, but was +14:01.");
        assertThatThrownBy(() -> UtcOffset.parse("+05:60")).hasMessageStartingWith("'+05:60' is not a UTC offset");
        assertThat(UtcOffset.parse("+05:59").minutes()).isEqualTo(359);
        String forty = "x".repeat(40);
        assertThatThrownBy(() -> UtcOffset.parse(forty)).hasMessageStartingWith("'" + forty + "' is not");
        assertThatThrownBy(() -> UtcOffset.parse(forty + "x")).hasMessageStartingWith("'" + forty + "…' is not");
    }
}
