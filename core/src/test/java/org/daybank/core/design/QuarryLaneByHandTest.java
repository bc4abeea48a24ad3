package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.grid;
import static org.daybank.core.design.Designs.gridInverters;
import static org.daybank.core.design.Margins.assertMargin;
import static org.daybank.core.design.Margins.rules;

import java.time.Month;
import java.util.List;
import java.util.Map;
import org.daybank.core.array.YieldModel;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.inverter.TrackerStrings;
import org.daybank.core.quantity.Money;
import org.daybank.core.sun.SunMonth;
import org.junit.jupiter.api.Test;

/**
 * An array that feeds a three-phase workshop's grid, worked by hand from the methods and the data sheets of the sample
 * catalogue, with yields in proportion to irradiance. The arithmetic in the comments keeps four to seven digits, hence the
 * tolerances.
 */
class QuarryLaneByHandTest {
    private static final DesignOutcome DESIGN = SystemDesigner.design(
            QuarryLane.BRIEF.withPolicy(QuarryLane.BRIEF
                    .policy()
                    .withArray(QuarryLane.BRIEF.policy().array().withYieldModel(YieldModel.PROPORTIONAL))),
            Catalog.sample());

    private static final GridDesign FEED = grid(DESIGN);

    @Test
    void whatTheWorkshopUsesInAYear() {
        // On a working day: saw 3000 W · 7.5 h · 0.35 = 7875 Wh, dust extraction 2200 · 7.5 · 0.6 = 9900, light 18 · 40
        // · 9.5
        // = 6840, compressor 4000 · 2 = 8000, office 350 · 10 = 3500: 36 115 Wh. Five days of seven, 365.25 days:
        // 36 115 · 5/7 · 365.25 = 9 422 145.5 Wh
        assertThat(FEED.energy().yearlyUse().wattHours()).isCloseTo(9_422_145.5, within(0.1));
    }

    @Test
    void sunOfJune() {
        // δ = 23.08591°, ω_s = arccos(−tan 50.6° · tan δ) = 121.25982°; H_0 = 11 489.77 Wh/m², · 0.48 = 5515.09 Wh/m²
        // Erbs, summer: 1.311 − 3.022 · 0.48 + 3.427 · 0.2304 − 1.821 · 0.110592 = 0.448633; a = 0.409 + 0.5016 · sin
        // 61.25982°
        // = 0.848807; b = 0.6609 − 0.4767 · sin 61.25982° = 0.242925
        // Eight parts of the day would do to 0.5 %: the plane looks 10° west of south at 15°, and for a moment after
        // sunrise
        // past the sun. 4000 parts of the same sums, over the year (Wh/m² on the plane):
        double[] plane = {
            1182.49, 1962.76, 3044.24, 4364.23, 5182.37, 5595.81, 5554.78, 4845.63, 3642.92, 2402.16, 1355.67, 956.02
        };
        SunMonth june = DESIGN.sun().in(Month.JUNE);
        assertThat(june.horizontal().wattHoursPerSquareMetre()).isCloseTo(5515.09, within(5e-3));
        assertThat(june.diffuseFraction().fraction()).isCloseTo(0.448633, within(5e-7));
        for (Month month : Month.values()) {
            double byHand = plane[month.getValue() - 1];
            // fewer parts see the edge at sunrise less sharply
            assertThat(DESIGN.sun().in(month).planeOfArray().wattHoursPerSquareMetre())
                    .as("%s", month)
                    .isCloseTo(byHand, within(2e-4 * byHand));
        }
    }

    @Test
    void howManyModules() {
        // PL-410 in June: 5595.81 / 16.16798 h = 346.1 W/m², energy-weighted · π²/8 = 427.0; rise 24/800 · 427.0 =
        // 12.81 K, cells
        // 17 + 3 + 12.81 = 32.81 °C; 1 − 0.0034 · 7.81 = 0.97345; 410 W · 5.59581 h · 0.97345 · 0.866761 = 1935.8 Wh a
        // day.
        // So for all months, Wh a day:
        //   442.84 727.89 1107.19 1554.52 1814.33 1935.79 1907.23 1668.85 1280.03 864.01 499.85 357.75
        // Times their days, February 28.25: 431 697 Wh a year. Real days differ from the mean day; energy comes in on
        // the clear
        // ones at no more than 700 W/m² in the mean, cells 21 K over the air: 417 089 Wh at the least
        // Wished: 0.9 · 9 422 145.5 = 8 479 931 Wh. Through 97.7 %: 8 479 931 / (431 697 · 0.977) = 20.106, at the most
        // 20.810:
        // 21 modules
        assertThat(FEED.system().module()).isEqualTo("PL-410");
        assertThat(FEED.system().modules()).isEqualTo(21);
        assertThat(FEED.energy().yearlyYield().wattHours()).isBetween(21 * 417_089 * 0.977, 21 * 431_697 * 0.977);
        assertThat(FEED.energy().coverage().orElseThrow().fraction()).isGreaterThanOrEqualTo(0.9);
        // twenty would not do, even in a year of mean days: 20 · 431 697 · 0.977 = 8 435 359 Wh
        assertThat(FEED.energy().yearlyYield().wattHours() / 21 * 20).isLessThan(8_479_931);
    }

    @Test
    void oneStringOnOneInverter() {
        StringInverterFit fit = FEED.system().stringInverters().orElseThrow();
        // 21 · 410 = 8610 W; over 8000 W 1.07625
        assertThat(fit.product()).isEqualTo("TG-T8");
        assertThat(fit.count()).isEqualTo(1);
        assertThat(fit.dcAcRatio().fraction()).isCloseTo(1.07625, within(1e-12));
        // Coldest 37.3 V · (1 + 0.0026 · 47) = 41.85806 V, at its best 31.2 · (1 + 0.0039 · 47) = 36.91896 V; 980 /
        // 41.858 = 23.4
        // and 850 / 36.919 = 23.02: all 21 in one string, 879.0193 V of 980 V: 0.10304
        assertThat(fit.units().get(0).trackers()).containsExactly(new TrackerStrings(1, 1, 21));
        assertMargin(fit.checks(), "coldestOpenCircuitVoltage", 0.10304);
        // Hottest: cells 37 + 24/800 · 1000 = 67 °C; 31.2 · (1 − 0.0039 · 42) · 0.98 = 25.56765 V, · 21 = 536.921 V,
        // over 160 V:
        // 2.35575
        assertMargin(fit.checks(), "hottestMaximumPowerVoltage", 2.35575);
        // 13.14 A of 16 A: 0.17875; 13.9 · 1.25 = 17.375 A of 22 A: 0.21023; 8610 W of 12 000 W: 0.2825
        assertMargin(fit.checks(), "inputCurrent", 0.17875);
        assertMargin(fit.checks(), "shortCircuitCurrent", 0.21023);
        assertMargin(fit.checks(), "maximumArrayPower", 0.2825);
        // In full sun 8610 · 0.95 · 0.98² · 0.977 = 7675 W: nothing is clipped
        assertThat(fit.clipping().fraction()).isZero();
        // 8000 W / (3 · 230 V)
        assertThat(fit.lineCurrent().amperes()).isCloseTo(11.5942, within(5e-5));
    }

    @Test
    void whyNotTheOthers() {
        var selection = gridInverters(DESIGN).orElseThrow();
        Map<String, List<String>> broken = rules(selection.stringInverters().rejected());
        // 8610 W / 15 000 W = 0.574, / 25 000 W = 0.3444
        assertThat(broken.get("TG-T15")).containsExactly("dcAcRatio");
        assertThat(broken.get("TG-T25")).containsExactly("dcAcRatio");
        assertThat(broken.get("TG-U7")).contains("phases");
        // Microinverters: through 96.5 % it takes 8 479 931 / (431 697 · 0.965) = 20.356 modules, at the most 21.07
        // TM-1600T, four modules each: six of them, 6 · 398 = 2388, with the modules 3171 + 2388 = 5559; with a 22nd
        // module 5710
        assertThat(FEED.alternatives().otherInverterKind().orElseThrow())
                .isIn(Money.of("5559", "EUR"), Money.of("5710", "EUR"));
    }

    @Test
    void price() {
        // 21 · 151 + 1390 = 4561
        assertThat(DESIGN.billOfMaterials().orElseThrow().total()).hasToString("4561.00 EUR");
    }
}
