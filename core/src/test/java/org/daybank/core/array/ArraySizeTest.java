package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Place;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.site.WeatherYearBuilder;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

/** Sizes by hand for a site where every day has eight hours and gives 4 kWh/m², in December 2 kWh/m², at 13 °C by day. */
class ArraySizeTest {
    private static final ArrayPolicy POLICY = ArrayPolicy.standard().withYieldModel(YieldModel.PROPORTIONAL);

    private static final PvModule MODULE = PvModuleBuilder.builder()
            .model("M400")
            .power(Power.watts(400))
            .openCircuitVoltage(Voltage.volts(50))
            .shortCircuitCurrent(Current.amperes(10.4))
            .maximumPowerVoltage(Voltage.volts(40))
            .maximumPowerCurrent(Current.amperes(10))
            .openCircuitVoltageCoefficient(TemperatureCoefficient.percentPerKelvin(-0.3))
            .shortCircuitCurrentCoefficient(TemperatureCoefficient.percentPerKelvin(0.05))
            .powerCoefficient(TemperatureCoefficient.percentPerKelvin(-0.4))
            .nominalOperatingCellTemperature(Temperature.celsius(45))
            .cellsInSeries(72)
            .systemVoltage(Voltage.volts(1000))
            .seriesFuse(Current.amperes(20))
            .price(Money.of("100", "EUR"))
            .build();

    private static final HourlySeries AIR = HourlySeries.celsius(even(13));

    private static final IrradianceDistribution SUN = sun(4, 2);

    private static Site site(double decemberSnow) {
        List<Ratio> snow = new ArrayList<>(Collections.nCopies(12, Ratio.ZERO));
        snow.set(11, Ratio.of(decemberSnow));
        return SiteBuilder.builder()
                .latitude(Latitude.degrees(45))
                .recordLow(Temperature.celsius(-15))
                .recordHigh(Temperature.celsius(35))
                .months(MonthlyClimateBuilder.builder()
                        .clearness(List.of(Ratio.of(0.5)))
                        .meanAir(Collections.nCopies(12, Temperature.celsius(10)))
                        .snowLoss(snow)
                        .build())
                .build();
    }

    private static double[] even(double number) {
        double[] hours = new double[HourCalendar.COMMON];
        Arrays.fill(hours, number);
        return hours;
    }

    /** Eight even hours a day that bring so much. */
    private static HourlySun hours(double kilowattHours, double inDecember) {
        HourCalendar calendar = new HourCalendar(2025, HourCalendar.COMMON);
        double[] watts = new double[HourCalendar.COMMON];
        for (int hour = 0; hour < watts.length; hour++) {
            boolean december = hour >= calendar.firstHour(Month.DECEMBER);
            boolean day = hour % 24 >= 8 && hour % 24 < 16;
            watts[hour] = day ? 1000 * (december ? inDecember : kilowattHours) / 8 : 0;
        }
        HourlySeries series = HourlySeries.wattsPerSquareMetre(watts);
        HourlySeries none = HourlySeries.wattsPerSquareMetre(new double[HourCalendar.COMMON]);
        return new HourlySun(
                ExposureBuilder.builder()
                        .plane(new Plane(Angle.degrees(60), Angle.degrees(180)))
                        .build(),
                SunPolicy.standard(),
                calendar,
                series,
                none,
                none,
                series,
                series);
    }

    /** Such hours by their classes, in air of 13 °C. */
    private static IrradianceDistribution sun(double kilowattHours, double inDecember) {
        HourlySun sun = hours(kilowattHours, inDecember);
        WeatherYear weather = WeatherYearBuilder.builder()
                .place(new Place(Latitude.degrees(45), Longitude.degrees(0), UtcOffset.hours(0), null))
                .year(2025)
                .global(sun.planeOfArray())
                .air(AIR)
                .build();
        return IrradianceDistribution.of(sun, weather);
    }

    private static ArrayNeed need(double wattHours) {
        return new ArrayNeed(List.of(Energy.wattHours(wattHours)), null, null);
    }

    @Test
    void yieldOfATrackedModule() {
        ModuleYield yield = ModuleYield.tracking(MODULE, site(0), SUN, POLICY);

        // factors .95 · .98 · .98 · .95 = 0.866761, charger 0.96: together 0.83209056
        // 4000 Wh / 8 h = 500 W/m²; cells 13 + 25/800 · 500 = 28.625 °C
        // 1 − 0.004 · 3.625 = 0.9855; 400 W · 4 h · 0.9855 · 0.83209056 = 1312.0404 Wh
        assertThat(yield.in(Month.MAY).wattHours()).isCloseTo(1312.0404, within(1e-3));
        // December: 250 W/m², cells 20.8125 °C, 1 + 0.004 · 4.1875 = 1.01675
        // 400 W · 2 h · 1.01675 · 0.83209056 = 676.8225 Wh
        assertThat(yield.in(Month.DECEMBER).wattHours()).isCloseTo(676.8225, within(1e-3));
    }

    @Test
    void yieldAtTheVoltageOfTheBank() {
        // 10 A · 2 h · 12 V · 0.866761 = 208.02264 Wh, whether one feeds 12 V or two in series 24 V
        assertThat(ModuleYield.direct(MODULE, 1, Voltage.volts(12), Voltage.volts(13.2), site(0), SUN, POLICY)
                        .in(Month.DECEMBER)
                        .wattHours())
                .isCloseTo(208.02264, within(1e-9));
        assertThat(ModuleYield.direct(MODULE, 2, Voltage.volts(24), Voltage.volts(26.4), site(0), SUN, POLICY)
                        .in(Month.DECEMBER)
                        .wattHours())
                .isCloseTo(208.02264, within(1e-9));
    }

    @Test
    void snowTakesItsShareOnBothPaths() {
        // 0.75 of the above
        assertThat(ModuleYield.tracking(MODULE, site(0.25), SUN, POLICY)
                        .in(Month.DECEMBER)
                        .wattHours())
                .isCloseTo(507.6169, within(1e-3));
        assertThat(ModuleYield.direct(MODULE, 1, Voltage.volts(12), Voltage.volts(13.2), site(0.25), SUN, POLICY)
                        .in(Month.DECEMBER)
                        .wattHours())
                .isCloseTo(156.01698, within(1e-9));
    }

    @Test
    void trackedArray() {
        ArraySize size = ArraySize.of(need(2000), ModuleYield.tracking(MODULE, site(0), SUN, POLICY), POLICY);

        // half of it passes through the battery, 94 %: 2000 · (0.5 + 0.5 / 0.94) = 2063.8298 Wh
        assertThat(size.inDesignMonth().need().wattHours()).isCloseTo(2063.8298, within(1e-4));
        assertThat(size.designMonth()).isEqualTo(Month.DECEMBER);
        // 2063.8298 · 1.3 / 676.8225 = 3.9641
        assertThat(size.exactModules().fraction()).isCloseTo(3.9641, within(1e-4));
        assertThat(size.modules()).isEqualTo(4);
        assertThat(size.power()).isEqualTo(Power.watts(1600));
        // 4 · 676.8225 / 2063.8298 = 1.31178
        assertThat(size.inDesignMonth().arrayToLoadRatio().fraction()).isCloseTo(1.31178, within(1e-5));
        // five, as whole strings may ask: 5 · 676.8225 = 3384.1125 Wh; what would just do stays
        ArraySize five = size.withModules(5);
        assertThat(five.inDesignMonth().yield().wattHours()).isCloseTo(3384.1125, within(5e-3));
        assertThat(five.exactModules()).isEqualTo(size.exactModules());
    }

    @Test
    void directArrayLosesChargeAndNotEnergyInTheBattery() {
        ArraySize size = ArraySize.of(
                need(2000),
                ModuleYield.direct(MODULE, 1, Voltage.volts(12), Voltage.volts(13.2), site(0), SUN, POLICY),
                POLICY);

        // 99 % of the charge: 2000 · (0.5 + 0.5 / 0.99) = 2010.10101 Wh; · 1.3 / 208.02264 = 12.5617
        assertThat(size.inDesignMonth().need().wattHours()).isCloseTo(2010.10101, within(1e-5));
        assertThat(size.exactModules().fraction()).isCloseTo(12.5617, within(1e-4));
        assertThat(size.modules()).isEqualTo(13);
    }

    @Test
    void batteryLossFollowsWhatIsDrawnAfterDarkAndTheChemistry() {
        ArrayNeed day = new ArrayNeed(List.of(Energy.wattHours(1000)), List.of(Ratio.ZERO), Chemistry.VENTED_LEAD_ACID);
        ArrayNeed night = day.withAfterDark(Collections.nCopies(12, Ratio.ONE));

        assertThat(day.atBank(0, ChargePath.TRACKING).wattHours()).isEqualTo(1000);
        // vented lead-acid gives back 80 % of the energy and 90 % of the charge: 1000 / 0.8, 1000 / 0.9
        assertThat(night.atBank(0, ChargePath.TRACKING).wattHours()).isCloseTo(1250, within(1e-9));
        assertThat(night.atBank(0, ChargePath.DIRECT).wattHours()).isCloseTo(1111.1111, within(1e-4));
    }

    @Test
    void aSummerLoadIsSizedInItsSummer() {
        List<Energy> july = new ArrayList<>(Collections.nCopies(12, Energy.wattHours(100)));
        july.set(6, Energy.wattHours(5000));

        ArraySize size = ArraySize.of(
                new ArrayNeed(july, null, null), ModuleYield.tracking(MODULE, site(0), SUN, POLICY), POLICY);

        // July 5000 · 1.0319149 · 1.3 / 1312.0404 = 5.112; December 100 · 1.0319149 · 1.3 / 676.8225 = 0.2
        assertThat(size.designMonth()).isEqualTo(Month.JULY);
        assertThat(size.modules()).isEqualTo(6);
    }

    @Test
    void inPolarNightNoArrayWillDo() {
        ModuleYield dark = ModuleYield.tracking(MODULE, site(0), sun(4, 0), POLICY);
        assertThat(dark.in(Month.DECEMBER)).isEqualTo(Energy.ZERO);

        assertThat(ArraySize.of(need(1), dark, POLICY).possible()).isFalse();
        List<Energy> summer = new ArrayList<>(Collections.nCopies(12, Energy.wattHours(500)));
        summer.set(11, Energy.ZERO);
        ArraySize withoutDecember = ArraySize.of(new ArrayNeed(summer, null, null), dark, POLICY);
        assertThat(withoutDecember.possible()).isTrue();
        assertThat(withoutDecember.modules()).isEqualTo(1);
    }

    @Test
    void withoutANeedThereIsNoArray() {
        ArraySize none = ArraySize.of(need(0), ModuleYield.tracking(MODULE, site(0), SUN, POLICY), POLICY);
        assertThat(none.possible()).isTrue();
        assertThat(none.modules()).isZero();
        assertThat(none.inDesignMonth().arrayToLoadRatio()).isEqualTo(Ratio.ZERO);
    }

    @Test
    void theLastArrayThatIsPossible() {
        ArraySize size = ArraySize.of(need(2000), ModuleYield.tracking(MODULE, site(0), SUN, POLICY), POLICY);
        assertThat(size.withModules(ArraySize.MOST_MODULES).possible()).isTrue();
        assertThat(size.withModules(ArraySize.MOST_MODULES + 1).possible()).isFalse();
    }

    @Test
    void aSearchAsksOnlyForTheExactNumber() {
        ModuleYield yield = ModuleYield.tracking(MODULE, site(0), SUN, POLICY);
        // as above: 2063.8298 · 1.3 / 676.8225
        assertThat(ArraySize.exactModules(need(2000), yield, POLICY)).isCloseTo(3.9641, within(1e-4));
        assertThat(ArraySize.exactModules(need(0), yield, POLICY)).isZero();
        ModuleYield dark = ModuleYield.tracking(MODULE, site(0), sun(4, 0), POLICY);
        assertThat(ArraySize.exactModules(need(1), dark, POLICY)).isEqualTo(Double.MAX_VALUE);
    }

    @Test
    void theWorkingShowsTheFormulaOfItsModelAndPath() {
        for (YieldModel model : YieldModel.values()) {
            ArrayPolicy policy = POLICY.withYieldModel(model);
            ModuleYield tracked = ModuleYield.tracking(MODULE, site(0), SUN, policy);
            ModuleYield direct =
                    ModuleYield.direct(MODULE, 1, Voltage.volts(12), Voltage.volts(13.2), site(0), SUN, policy);
            boolean diode = model == YieldModel.SINGLE_DIODE;
            assertThat(formula(tracked, policy)).startsWith(diode ? "E₁ = Σ P_mp(G, T_cell)" : "E₁ = Σ P · G");
            assertThat(formula(direct, policy))
                    .startsWith("E₁ = U_nominal / n ·")
                    .contains(diode ? "I(U_charging / n, G, T_cell)" : "I_mp · G");
        }
    }

    private static String formula(ModuleYield yield, ArrayPolicy policy) {
        return ArraySize.of(need(2000), yield, policy).working().steps().get(1).formula();
    }

    /** The numbers of {@link #trackedArray}, as one would write them. */
    @Test
    void theWorkingShowsTheNumbersOfTheDesignMonth() {
        List<Energy> needs = new ArrayList<>(Collections.nCopies(12, Energy.wattHours(1)));
        needs.set(11, Energy.wattHours(2000));
        List<Ratio> afterDark = new ArrayList<>(Collections.nCopies(12, Ratio.ZERO));
        afterDark.set(11, Ratio.of(0.5));
        List<Step> steps = ArraySize.of(
                        new ArrayNeed(needs, afterDark, null),
                        ModuleYield.tracking(MODULE, site(0), SUN, POLICY),
                        POLICY)
                .working()
                .steps();
        assertThat(steps.get(0).substituted()).isEqualTo("2 kWh · (1 − 0.5 + 0.5 / 0.94)");
        assertThat(steps.get(0).result()).isEqualTo("2.064 kWh");
        assertThat(steps.get(1).result()).isEqualTo("676.8 Wh");
        assertThat(steps.get(1).source()).startsWith("in proportion to irradiance");
        assertThat(steps.get(2).substituted()).isEqualTo("2.064 kWh · 1.3 / 676.8 Wh = 3.964");
        assertThat(steps.get(2).result()).isEqualTo("4");
    }

    /** At 500 W/m² in air of 13 °C: cells 28.625 °C, 400 W · 0.5 · 0.9855 = 197.1 W; 10 A · 0.5 = 5 A. By night nothing. */
    @Test
    void outputOfEveryHour() {
        ModuleOutput output = ModuleOutput.of(MODULE, YieldModel.PROPORTIONAL);
        HourlySeries best = output.best(hours(4, 2), AIR);
        assertThat(best.at(7)).isZero();
        assertThat(best.at(8)).isCloseTo(197.1, within(1e-9));
        HourlySeries current = output.current(Voltage.volts(13), hours(4, 2), AIR);
        assertThat(current.at(8)).isCloseTo(5, within(1e-12));
        assertThat(current.at(16)).isZero();
        // the circuit of the data sheet gives what the sheet says at 1000 W/m² and 25 °C, here in air of 25 − 31.25 °C
        HourlySeries cold = HourlySeries.celsius(even(25 - 31.25));
        ModuleOutput diode = ModuleOutput.of(MODULE, YieldModel.SINGLE_DIODE);
        assertThat(diode.best(hours(8, 8), cold).at(8)).isCloseTo(400, within(1e-6));
        assertThat(diode.current(Voltage.volts(40), hours(8, 8), cold).at(8)).isCloseTo(10, within(1e-6));
        assertThat(diode.current(Voltage.volts(60), hours(8, 8), cold).at(8))
                .as("above its open-circuit voltage")
                .isZero();
    }

    @Test
    void needSaysEverythingThatIsWrongAtOnce() {
        assertThatThrownBy(
                        () -> new ArrayNeed(Collections.nCopies(5, Energy.wattHours(1)), List.of(Ratio.of(1.5)), null))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("dailyEnergy")
                .hasMessageContaining("afterDark");
    }

    @Test
    void extremesOfAModule() {
        ModuleExtremes extremes = ModuleExtremes.of(MODULE, site(0), POLICY);

        // 50 V · (1 + 0.003 · 40) = 56 V
        assertThat(extremes.coldestOpenCircuit().volts()).isCloseTo(56, within(1e-9));
        assertThat(extremes.coldestOpenCircuit(3).volts()).isCloseTo(168, within(1e-9));
        // 35 + 25/800 · 1000 = 66.25 °C; 40 V · (1 − 0.0045 · 41.25) · 0.98 = 31.9235 V
        assertThat(extremes.hottestCell().celsius()).isCloseTo(66.25, within(1e-9));
        assertThat(extremes.hottestMaximumPower().volts()).isCloseTo(31.9235, within(1e-9));
        assertThat(extremes.hottestMaximumPower(2).volts()).isCloseTo(63.847, within(1e-9));
    }
}
