package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Place;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.site.WeatherYearBuilder;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySky;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;
import org.daybank.core.sun.SunClass;
import org.daybank.core.sun.SunPolicy;
import org.junit.jupiter.api.Test;

/** What a module brings at its best point and at the bank's own voltage. */
class ModuleYieldTest {
    private static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(35))
            .recordLow(Temperature.celsius(-10))
            .months(MonthlyClimateBuilder.builder()
                    .clearness(List.of(Ratio.of(0.5)))
                    .meanAir(Collections.nCopies(12, Temperature.celsius(12)))
                    .build())
            .build();
    private static final Plane PLANE = new Plane(Angle.degrees(40), Angle.degrees(180));
    private static final IrradianceDistribution SUNSHINE = IrradianceDistribution.of(SITE, PLANE, SunPolicy.standard());
    private static final Voltage BANK_12V = Voltage.volts(12);

    private static PvModule module(String model) {
        return Catalog.sample().modules().stream()
                .filter(module -> module.model().equals(model))
                .findFirst()
                .orElseThrow();
    }

    private static ModuleYield tracking(PvModule module, YieldModel model) {
        return ModuleYield.tracking(
                module, SITE, SUNSHINE, ArrayPolicy.standard().withYieldModel(model));
    }

    private static ModuleYield direct12V(PvModule module) {
        return ModuleYield.direct(module, 1, BANK_12V, Voltage.volts(13.2), SITE, SUNSHINE, ArrayPolicy.standard());
    }

    @Test
    void sunshineOfAMonthIsThatOfItsMeanDay() {
        for (Month month : Month.values()) {
            double sum = SUNSHINE.in(month).stream()
                    .mapToDouble(sun -> sun.irradiance().wattsPerSquareMetre()
                            * sun.perDay().hours())
                    .sum();
            double published = PlaneOfArray.monthly(SITE, PLANE, SunPolicy.standard())
                    .in(month)
                    .planeOfArray()
                    .wattHoursPerSquareMetre();
            assertThat(sum).isCloseTo(published, within(1e-9 * published));
        }
    }

    @Test
    void sunshineOfAWeatherYearIsTheSumOfItsHours() {
        double[] global = new double[8760];
        double[] air = new double[8760];
        for (int hour = 0; hour < global.length; hour++) {
            global[hour] = Math.max(0, 700 * Math.cos(Math.PI * (hour % 24 - 11.5) / 12));
            air[hour] = 12;
        }
        WeatherYear weather = WeatherYearBuilder.builder()
                .place(new Place(Latitude.degrees(10), Longitude.degrees(0), UtcOffset.hours(0), null))
                .year(2025)
                .global(HourlySeries.wattsPerSquareMetre(global))
                .air(HourlySeries.celsius(air))
                .build();
        HourlySun sun = HourlySky.of(weather, SunPolicy.standard())
                .on(ExposureBuilder.builder().plane(PLANE).build());
        IrradianceDistribution distribution = IrradianceDistribution.of(sun, weather);
        double sum = 0;
        for (Month month : Month.values()) {
            for (SunClass hours : distribution.in(month)) {
                sum += hours.irradiance().wattsPerSquareMetre() * hours.perDay().hours() * month.length(false);
                assertThat(hours.air().celsius()).isCloseTo(12, within(1e-9));
            }
        }
        double expected = sun.effective().sum(0, 8760);
        assertThat(sum).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void aYearHasTheDaysOfItsMonths() {
        // 1 kWh in January (31 days), 2 kWh in February (28), 1 kWh in the other 306 days: 31 + 56 + 306
        List<Energy> daily = new ArrayList<>(Collections.nCopies(12, Energy.kilowattHours(1)));
        daily.set(1, Energy.kilowattHours(2));

        assertThat(new ModuleYield(module("PL-410"), ChargePath.TRACKING, 1, daily)
                        .yearly()
                        .kilowattHours())
                .isCloseTo(393, within(1e-9));
    }

    @Test
    void trackingNeverBringsLess() {
        for (PvModule module : Catalog.sample().modules()) {
            if (module.maximumPowerVoltage().volts() < 15) {
                // below the bank's voltage nothing flows on the direct path
                continue;
            }
            PathComparison comparison = PathComparison.of(
                    tracking(module, YieldModel.SINGLE_DIODE).times(Ratio.of(1 / 0.96)), direct12V(module));
            assertThat(comparison.months())
                    .as(module.model())
                    .allSatisfy(month -> assertThat(month.gain().fraction()).isPositive());
        }
    }

    @Test
    void moduleOfTheBanksGroupLosesLittleAtItsVoltage() {
        // PL-160: 8.6 A at 18.6 V. At 13.2 V all but its short-circuit current flows, 9.1 A; it counts at 12 V: 109 W
        // of
        // 160 W, a gain of 0.465 with cells at 25 °C; at 45 °C the best point falls by 8 %: 0.35. Cells are between.
        PvModule module = module("PL-160");
        double gain = PathComparison.of(
                        tracking(module, YieldModel.SINGLE_DIODE).times(Ratio.of(1 / 0.96)), direct12V(module))
                .yearlyGain()
                .fraction();

        assertThat(gain).isBetween(0.33, 0.465);
    }

    @Test
    void moduleOfTheWrongGroupThrowsAwayMoreThanItBrings() {
        // PL-410: 13.9 A at 12 V are 167 W of 410 W: a gain of 1.46 with cells at 25 °C, 1.29 at 45 °C
        PvModule module = module("PL-410");
        double gain = PathComparison.of(
                        tracking(module, YieldModel.SINGLE_DIODE).times(Ratio.of(1 / 0.96)), direct12V(module))
                .yearlyGain()
                .fraction();

        assertThat(gain).isBetween(1.25, 1.46);
    }

    @Test
    void moduleTooLowForTheBankBringsNothing() {
        // PL-24D: 11.2 V open circuit, under the 13.2 V of a bank that charges
        assertThat(direct12V(module("PL-24D")).daily())
                .allSatisfy(energy -> assertThat(energy.wattHours()).isZero());
    }

    @Test
    void lightOnTheBackAddsItsShare() {
        PvModule bothSides = module("PL-540B");
        ModuleYield with = tracking(bothSides, YieldModel.PROPORTIONAL);
        ModuleYield without = tracking(bothSides.withBifacialGain(Ratio.ZERO), YieldModel.PROPORTIONAL);

        for (Month month : Month.values()) {
            assertThat(with.in(month).dividedBy(without.in(month))).isCloseTo(1.10, within(1e-9));
        }
    }

    @Test
    void snowTakesItsShareOfTheMonth() {
        Site snowy = SITE.withMonths(SITE.months()
                .withSnowLoss(List.of(
                        Ratio.of(0.4),
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO,
                        Ratio.ZERO)));
        ModuleYield bare = tracking(module("PL-410"), YieldModel.SINGLE_DIODE);
        ModuleYield covered = ModuleYield.tracking(module("PL-410"), snowy, SUNSHINE, ArrayPolicy.standard());

        assertThat(covered.in(Month.JANUARY).dividedBy(bare.in(Month.JANUARY))).isCloseTo(0.6, within(1e-12));
        assertThat(covered.in(Month.JULY)).isEqualTo(bare.in(Month.JULY));
    }

    @Test
    void twoInSeriesShareTheVoltage() {
        // two on 24 V are each as one on 12 V
        PvModule module = module("PL-410");
        ModuleYield pair = ModuleYield.direct(
                module, 2, Voltage.volts(24), Voltage.volts(26.4), SITE, SUNSHINE, ArrayPolicy.standard());

        assertThat(pair.daily()).isEqualTo(direct12V(module).daily());
        assertThat(pair.yearly()).isGreaterThan(Energy.ZERO);
    }
}
