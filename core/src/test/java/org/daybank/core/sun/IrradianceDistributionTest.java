package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.daybank.core.Reference;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.EpwReader;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.Place;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.site.WeatherYearBuilder;
import org.junit.jupiter.api.Test;

class IrradianceDistributionTest {
    private static final SunPolicy POLICY = SunPolicy.standard();

    @Test
    void whatLiesAboveAnIrradianceShrinksAsItGrows() {
        IrradianceDistribution year = IrradianceDistribution.of(
                Sites.withClearness(40, 0.5), new Plane(Angle.degrees(40), Angle.degrees(180)), POLICY);
        Ratio before = year.shareAbove(Irradiance.ZERO);

        assertThat(before.fraction()).isCloseTo(1, within(1e-12));
        for (int watts = 50; watts <= 1500; watts += 50) {
            Ratio share = year.shareAbove(Irradiance.wattsPerSquareMetre(watts));
            assertThat(share).isLessThanOrEqualTo(before);
            before = share;
        }
        assertThat(before).isEqualTo(Ratio.ZERO);
    }

    @Test
    void aSunlessYearHasNothingAboveAnything() {
        IrradianceDistribution dark =
                IrradianceDistribution.of(Sites.withClearness(40, 0), new Plane(Angle.ZERO, Angle.ZERO), POLICY);

        assertThat(dark.shareAbove(Irradiance.wattsPerSquareMetre(10))).isEqualTo(Ratio.ZERO);
    }

    /**
     * Each day three hours of 205 W/m² in air of 5 °C, two of 812 W/m² at 20 °C and one of 838 W/m² at 10 °C. Classes are 50 W/m²
     * wide, so that the last two are one: (2 · 812 + 838) / 3 = 820.667 W/m² for 3 h, the air by energy (20 · 1624 + 10 · 838) /
     * 2462 = 16.5963 °C. Above 400 W/m² lie (2 · 412 + 438) / (615 + 1624 + 838) = 0.410140.
     */
    @Test
    void hoursOfAWeatherYearByClasses() {
        double[] watts = {205, 205, 205, 812, 812, 838};
        double[] celsius = {5, 5, 5, 20, 20, 10};
        HourlySun sun = hours(hour -> hour >= 10 && hour < 16 ? watts[hour - 10] : 0);
        WeatherYear weather = WeatherYearBuilder.builder()
                .place(new Place(Latitude.degrees(45), Longitude.degrees(0), UtcOffset.hours(0), null))
                .year(2025)
                .global(sun.planeOfArray())
                .air(HourlySeries.celsius(daily(hour -> hour >= 10 && hour < 16 ? celsius[hour - 10] : -40)))
                .build();
        IrradianceDistribution year = IrradianceDistribution.of(sun, weather);

        for (Month month : Month.values()) {
            List<SunClass> classes = year.in(month);
            assertThat(classes).hasSize(2);
            assertThat(classes.get(0).irradiance().wattsPerSquareMetre()).isCloseTo(205, within(1e-9));
            assertThat(classes.get(0).perDay().hours()).isCloseTo(3, within(1e-9));
            assertThat(classes.get(0).air().celsius()).isCloseTo(5, within(1e-9));
            assertThat(classes.get(1).irradiance().wattsPerSquareMetre()).isCloseTo(820.6667, within(1e-4));
            assertThat(classes.get(1).perDay().hours()).isCloseTo(3, within(1e-9));
            assertThat(classes.get(1).air().celsius()).isCloseTo(16.5963, within(1e-4));
        }
        assertThat(year.shareAbove(Irradiance.wattsPerSquareMetre(400)).fraction())
                .isCloseTo(0.410140, within(1e-6));
        assertThat(year.shareAbove(Irradiance.wattsPerSquareMetre(838)).fraction())
                .isZero();
    }

    private static HourlySun hours(IntToDoubleFunction wattsPerSquareMetre) {
        HourlySeries series = HourlySeries.wattsPerSquareMetre(daily(wattsPerSquareMetre));
        HourlySeries none = HourlySeries.wattsPerSquareMetre(new double[HourCalendar.COMMON]);
        return new HourlySun(
                ExposureBuilder.builder()
                        .plane(new Plane(Angle.degrees(30), Angle.degrees(180)))
                        .build(),
                POLICY,
                new HourCalendar(2025, HourCalendar.COMMON),
                series,
                none,
                none,
                series,
                series);
    }

    /** The same day all year. */
    private static double[] daily(IntToDoubleFunction byHour) {
        return IntStream.range(0, HourCalendar.COMMON)
                .mapToDouble(hour -> byHour.applyAsDouble(hour % 24))
                .toArray();
    }

    /**
     * Against every hour of a typical year. The mean day knows no broken clouds and no hour clearer than its day, so the
     * shares are held to four hundredths of the year's irradiation.
     */
    @Test
    void sharesOfATypicalYear() {
        WeatherYear weather = EpwReader.read(Reference.text("weather/golden-tmy3.epw"));
        Plane plane = new Plane(Angle.degrees(40), Angle.degrees(180));
        HourlySeries hours = HourlySky.of(weather, POLICY)
                .on(ExposureBuilder.builder().plane(plane).build())
                .planeOfArray();
        IrradianceDistribution year = IrradianceDistribution.of(weather.site(), plane, POLICY);

        for (int limit = 200; limit <= 1000; limit += 200) {
            double above = 0;
            for (int hour = 0; hour < hours.size(); hour++) {
                above += Math.max(0, hours.at(hour) - limit);
            }
            assertThat(year.shareAbove(Irradiance.wattsPerSquareMetre(limit)).fraction())
                    .as("above %d W/m²", limit)
                    .isCloseTo(above / hours.sum(0, hours.size()), within(0.04));
        }
    }
}
