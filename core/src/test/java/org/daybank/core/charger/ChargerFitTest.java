package org.daybank.core.charger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.charger.ChargerSheets.DIRECT;
import static org.daybank.core.charger.ChargerSheets.MODULE;
import static org.daybank.core.charger.ChargerSheets.NEED;
import static org.daybank.core.charger.ChargerSheets.SUNSHINE;
import static org.daybank.core.charger.ChargerSheets.TRACKING;
import static org.daybank.core.charger.ChargerSheets.TWELVE;
import static org.daybank.core.charger.ChargerSheets.offer;
import static org.daybank.core.charger.ChargerSheets.twelveVolts;

import java.util.List;
import java.util.Objects;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Check;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each rule broken once, with nothing else broken. */
class ChargerFitTest {
    private static final ChargerPolicy POLICY = ChargerPolicy.standard();

    /** Four modules: 3.8 / 0.95 = 4. */
    private static final ArrayOffer FOUR = offer(MODULE, 3.8, 9);

    private static final ArrayOffer ONE = offer(MODULE, 0.95, 1);

    private static final ChargeController UP =
            TRACKING.withKind(ControllerKind.STEP_UP_MPPT).withBusVoltages(List.of(Voltage.volts(48)));

    /** Lithium on 48 V: charged at 56 V, at its lowest 16 · 2.9 V = 46.4 V. */
    private static final ChargerNeed FORTY_EIGHT = ChargerNeedBuilder.builder()
            .nominalVoltage(Voltage.volts(48))
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .hottestAir(Temperature.celsius(30))
            .build();

    @Test
    void longStringsSpareAController() {
        // In strings of one: 4 strings of 10.4 A · 1.25 = 13 A, two on each (26 A of 30 A), 2 controllers: 400
        // In strings of two (112 V of 150 · 0.98 = 147 V): 2 strings, 1 controller: 200
        ChargerFit fit = ChargerFit.of(NEED, FOUR, TRACKING, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.count()).isEqualTo(1);
        assertThat(fit.array().series()).isEqualTo(2);
        assertThat(fit.array().stringsOnEach()).containsExactly(2);
        assertThat(fit.price()).isEqualTo(Money.of("200", "EUR"));
        assertThat(fit.priceWithArray()).isEqualTo(Money.of("600", "EUR"));
        // In full sun 1600 W · 0.9 · 0.95 = 1368 W; / 25.6 V = 53.4375 A
        assertThat(fit.chargingCurrent().amperes()).isCloseTo(53.4375, within(1e-9));
        assertMargin(fit, "coldestOpenCircuitVoltage", (147 - 112) / 147.0);
        assertMargin(fit, "systemVoltage", (1000 - 112) / 1000.0);
        assertMargin(fit, "hottestMaximumPowerVoltage", (64.2 - 32) / 32);
        assertMargin(fit, "inputCurrent", (30 - 26) / 30.0);
    }

    @Test
    void chargingCurrentFollowsTheBankVoltage() {
        ChargerFit fit = ChargerFit.of(NEED, ONE, TRACKING, POLICY);

        // 400 W · 0.9 · 0.95 = 342 W: / 25.6 V = 13.359375 A, / 28 V = 12.214286 A
        assertThat(fit.chargingCurrent().amperes()).isCloseTo(13.359375, within(1e-9));
        assertThat(fit.chargingCurrentAtAbsorption().amperes()).isCloseTo(12.214286, within(1e-6));
    }

    @Test
    void coldestMorningJustTooMuch() {
        // 57.1 V · 0.98 = 55.958 V, under the 56 V of a single module
        ChargerFit fit = broken(NEED, ONE, TRACKING.withMaximumInputVoltage(Voltage.volts(57.1)));
        assertBroken(fit, "coldestOpenCircuitVoltage", (55.958 - 56) / 55.958);
        // 57.2 V · 0.98 = 56.056 V
        assertThat(ChargerFit.of(NEED, ONE, TRACKING.withMaximumInputVoltage(Voltage.volts(57.2)), POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void stringsStopShortOfTheLimit() {
        // 114.2 V · 0.98 = 111.916 V, under the 112 V of two: strings of one on two controllers
        ChargerFit fit = ChargerFit.of(NEED, FOUR, TRACKING.withMaximumInputVoltage(Voltage.volts(114.2)), POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.array().series()).isEqualTo(1);
        assertThat(fit.count()).isEqualTo(2);
        assertThat(fit.array().stringsOnEach()).containsExactly(2, 2);
    }

    @Test
    void insulationOfTheModules() {
        assertBroken(
                broken(NEED, offer(MODULE.withSystemVoltage(Voltage.volts(55)), 0.95, 1), TRACKING),
                "systemVoltage",
                (55 - 56) / 55.0);
    }

    @Test
    void hotModulesThatOnlyReachTheChargingVoltageInPairs() {
        // 28 V + 4.2 V = 32.2 V, over the 32.1 V of one; two have 64.2 V, but 112 V in the cold
        ChargeController controller = TRACKING.withHeadroom(Voltage.volts(4.2));

        assertThat(ChargerFit.of(NEED, FOUR, controller, POLICY).array().series())
                .isEqualTo(2);
        // 60 V · 0.98 = 58.8 V stand one in the cold only
        assertBroken(
                broken(NEED, offer(MODULE, 1.9, 2), controller.withMaximumInputVoltage(Voltage.volts(60))),
                "coldestOpenCircuitVoltage",
                (58.8 - 112) / 58.8);
    }

    @Test
    void hotModuleBelowTheChargingVoltage() {
        // 14.7 V + 1 V = 15.7 V, over 15.6 V
        assertBroken(
                broken(twelveVolts(), offer(TWELVE, 24, 15.6, 1, 1), DIRECT),
                "hottestMaximumPowerVoltage",
                (15.6 - 15.7) / 15.7);
    }

    @Test
    void directControllersNeedTheModulesOfTheBank() {
        ArrayOffer two = offer(TWELVE, 24, 16.2, 2, 2);
        PvModule twentyFour = MODULE.withNominalGroup(Voltage.volts(24));
        PvModule noGroup = MODULE.withModel("M400X");

        // On 24 V two of the 12 V group in series: 32.4 V hot over 28 V + 1 V
        ChargerFit pair = ChargerFit.of(NEED, two, DIRECT, POLICY);
        assertThat(pair.fits()).isTrue();
        assertThat(pair.array().series()).isEqualTo(2);
        assertThat(pair.array().modules()).isEqualTo(2);
        // On 12 V a module of the 24 V group, or of none
        assertBroken(broken(twelveVolts(), offer(twentyFour, 1, 1), DIRECT), "moduleGroup");
        assertBroken(broken(NEED, offer(noGroup, 1, 1), DIRECT), "moduleGroup");
    }

    @Test
    void directInputCurrentCountsBrightSunOnce() {
        ArrayOffer one = offer(TWELVE, 24, 16.2, 1, 1);
        // 10.4 A · 1.25 = 13 A
        ChargeController just =
                DIRECT.withOutputCurrent(Current.amperes(13)).withMaximumInputCurrent(Current.amperes(13));
        assertThat(ChargerFit.of(twelveVolts(), one, just, POLICY).fits()).isTrue();
        ChargeController less =
                DIRECT.withOutputCurrent(Current.amperes(12.5)).withMaximumInputCurrent(Current.amperes(12.5));
        assertBroken(broken(twelveVolts(), one, less), "inputCurrent", -0.5 / 12.5);
    }

    @Test
    void directControllersInTheHeatTakeFewerStrings() {
        // In 45 °C, 5 K over 40 °C, 2 % less for each: 40 A · 0.9 = 36 A, two strings of 13 A and not three
        ChargerNeed hot = twelveVolts().withHottestAir(Temperature.celsius(45));
        ChargerFit fit = ChargerFit.of(hot, offer(TWELVE, 24, 16.2, 3, 3), DIRECT, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.array().stringsOnEach()).containsExactly(2, 1);
    }

    @Test
    void aDearerStringThatKeepsEveryRuleGoesBeforeACheaperOneThatDoesNot() {
        // three modules: in strings of one three of 13 A, two on each of two controllers of 26 A at 50 EUR, 400 EUR
        // with
        // the modules, where one alone may charge; in strings of two four modules on one controller, 450 EUR
        ChargeController alone = TRACKING.withMaximumInputCurrent(Current.amperes(26))
                .withMostInParallel(1)
                .withPrice(Money.of("50", "EUR"));
        ChargerFit fit = ChargerFit.of(NEED, offer(MODULE, 2.85, 3), alone, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.array().series()).isEqualTo(2);
        assertThat(fit.priceWithArray()).isEqualTo(Money.of("450", "EUR"));
        // where two may charge together the cheaper one is taken
        ChargerFit together = ChargerFit.of(NEED, offer(MODULE, 2.85, 3), alone.withMostInParallel(2), POLICY);
        assertThat(together.array().series()).isEqualTo(1);
        assertThat(together.priceWithArray()).isEqualTo(Money.of("400", "EUR"));
    }

    @Test
    void stringsThatJustReachAndJustStandAreTaken() {
        // 28 V + 4 V = 32 V, all that one has in the heat
        assertThat(ChargerFit.of(NEED, offer(MODULE, 56, 32, 0.95, 1), TRACKING, POLICY)
                        .array()
                        .series())
                .isEqualTo(1);
        // 2 · 56 V = 112 V, all that the modules are insulated for
        ChargerFit two =
                ChargerFit.of(NEED, offer(MODULE.withSystemVoltage(Voltage.volts(112)), 3.8, 9), TRACKING, POLICY);
        assertThat(two.fits()).isTrue();
        assertThat(two.array().series()).isEqualTo(2);
        assertMargin(two, "systemVoltage", 0);
    }

    @Test
    void clippingSharesTheStringsAmongMoreControllers() {
        // 60 V · 0.98 leave strings of one, four of 13 A on 60 A; all four give 1368 W in full sun and the output
        // 30 A · 25.6 V = 768 W, so that it is full over 561 W/m²; two give 684 W, and nothing is lost
        ChargeController narrow = TRACKING.withMaximumInputVoltage(Voltage.volts(60))
                .withMaximumInputCurrent(Current.amperes(60))
                .withOutputCurrent(Current.amperes(30));
        ChargerFit fit = ChargerFit.of(NEED, FOUR, narrow, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.array().stringsOnEach()).containsExactly(2, 2);
        assertThat(fit.clipping()).isEqualTo(Ratio.ZERO);
        // all on one where half of the year's energy may be lost
        assertThat(ChargerFit.of(NEED, FOUR, narrow, POLICY.withClippingLimit(Ratio.of(0.5)))
                        .array()
                        .stringsOnEach())
                .containsExactly(4);
        // where nothing may be lost, an output that is never full still takes both strings of two
        assertThat(ChargerFit.of(NEED, FOUR, TRACKING, POLICY.withClippingLimit(Ratio.ZERO))
                        .array()
                        .stringsOnEach())
                .containsExactly(2);
    }

    @Test
    void aLowestInputVoltageIsJudgedWhereThereIsOne() {
        assertThat(ChargerFit.of(NEED, ONE, TRACKING, POLICY).checks())
                .extracting(check -> check.rule().code())
                .doesNotContain("lowestInputVoltage");
        assertThat(ChargerFit.of(NEED, ONE, TRACKING.withMinimumInputVoltage(Voltage.volts(20)), POLICY)
                        .checks())
                .extracting(check -> check.rule().code())
                .contains("lowestInputVoltage");
        // a step-up controller lifts whatever comes in: it is its own rule there, even from 0 V
        assertThat(ChargerFit.of(FORTY_EIGHT, offer(MODULE, 46.3, 32, 0.95, 1), UP, POLICY)
                        .checks())
                .extracting(check -> check.rule().code())
                .contains("lowestInputVoltage")
                .doesNotContain("hottestMaximumPowerVoltage");
    }

    @Test
    void whatIsNoNeedAndNoPolicyIsRefused() {
        assertThatThrownBy(() -> ChargerNeedBuilder.builder()
                        .nominalVoltage(Voltage.volts(60))
                        .dcLoadCurrent(Current.amperes(-1))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("nominalVoltage must be from 12 V to 48 V, but was 60 V. chemistry is required. "
                        + "dcLoadCurrent must be from 0 A to 5000 kA, but was -1 A.");
        assertThatThrownBy(() -> POLICY.withShortCircuitFactor(Ratio.of(0.9)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("shortCircuitFactor must be from 1 to 1.6, but was 0.9.");
    }

    @Test
    void trackingInputCurrent() {
        // 13 A of 12 A
        assertBroken(
                broken(NEED, ONE, TRACKING.withMaximumInputCurrent(Current.amperes(12))),
                "inputCurrent",
                (12 - 13) / 12.0);
    }

    @Test
    void lightOnTheBackCounts() {
        // 10.4 A · 1.1 · 1.25 = 14.3 A of 14 A
        assertBroken(
                broken(
                        NEED,
                        offer(MODULE.withBifacialGain(Ratio.of(0.1)), 0.95, 1),
                        TRACKING.withMaximumInputCurrent(Current.amperes(14))),
                "inputCurrent",
                -0.3 / 14);
    }

    @Test
    void lightOnTheBackFillsTheOutputSooner() {
        // 342 W · 1.1 = 376.2 W in full sun: / 25.6 V = 14.6953125 A; of 7 A · 25.6 V = 179.2 W all over 476.342 W/m²
        // is lost
        ArrayOffer bothSides = offer(MODULE.withBifacialGain(Ratio.of(0.1)), 0.95, 1);

        assertThat(ChargerFit.of(NEED, bothSides, TRACKING, POLICY)
                        .chargingCurrent()
                        .amperes())
                .isCloseTo(14.6953125, within(1e-9));
        assertThat(ChargerFit.of(NEED, bothSides, TRACKING.withOutputCurrent(Current.amperes(7)), POLICY)
                        .clipping()
                        .fraction())
                .isCloseTo(
                        SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(476.342))
                                .fraction(),
                        within(1e-6));
    }

    @Test
    void clipping() {
        // 7 A · 25.6 V = 179.2 W of 342 W in full sun: all over 523.977 W/m² is lost
        ChargerFit fit = broken(NEED, ONE, TRACKING.withOutputCurrent(Current.amperes(7)));

        Ratio lost = SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(523.977));
        assertThat(lost).isGreaterThan(Ratio.of(0.1));
        assertBroken(fit, "clipping");
        assertThat(fit.clipping().fraction()).isCloseTo(lost.fraction(), within(1e-6));
    }

    @Test
    void aDeratedOutputClipsMore() {
        // −2 %/K, 10 K over 40 °C: 12 A · 0.8 = 9.6 A; 245.76 W of 342 W: over 718.596 W/m²
        ChargerNeed hot = NEED.withHottestAir(Temperature.celsius(50));
        ChargerFit fit = ChargerFit.of(
                hot,
                ONE,
                TRACKING.withOutputCurrent(Current.amperes(12))
                        .withDerating(TemperatureCoefficient.percentPerKelvin(-2)),
                POLICY);

        assertThat(fit.clipping().fraction())
                .isCloseTo(
                        SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(718.596))
                                .fraction(),
                        within(1e-6));
        assertThat(fit.chargingCurrent().amperes()).isCloseTo(9.6, within(1e-9));
    }

    @Test
    void moreThanTheBankTakes() {
        ChargerNeed gentle = ChargerNeedBuilder.builder(NEED)
                .maximumChargeCurrent(Current.amperes(25))
                .build();
        assertBroken(broken(gentle, FOUR, TRACKING), "bankChargeCurrent", (25 - 53.4375) / 25);
    }

    @Test
    void otherBankOrChemistry() {
        assertBroken(broken(NEED, ONE, TRACKING.withBusVoltages(List.of(Voltage.volts(12)))), "busVoltage");
        assertBroken(broken(NEED, ONE, TRACKING.withChemistries(List.of(Chemistry.AGM, Chemistry.GEL))), "chemistry");
    }

    @Test
    void functionsAskedFor() {
        ChargerNeed curious = ChargerNeedBuilder.builder(NEED)
                .functions(List.of(ControllerFunction.DISPLAY, ControllerFunction.NETWORK_MONITORING))
                .build();
        ChargerFit fit = broken(curious, ONE, TRACKING);

        assertBroken(fit, "function");
        assertThat(fit.rejection().failedChecks().get(0).message())
                .hasToString("The required function network monitoring is not available; available: display.");
        assertThat(broken(curious, ONE, TRACKING.withFunctions(List.of()))
                        .rejection()
                        .failedChecks()
                        .get(0)
                        .message())
                .hasToString("The required function display is not available; available: nothing besides charging.");
    }

    @Test
    void tooManyInParallel() {
        // strings of two, 13 A each: with 13 A one controller takes one of the two
        ChargeController small =
                TRACKING.withMaximumInputCurrent(Current.amperes(13)).withMostInParallel(1);
        assertBroken(broken(NEED, FOUR, small), "controllersInParallel");
        assertThat(ChargerFit.of(NEED, FOUR, small.withMostInParallel(2), POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void stepUpStaysBelowTheBank() {
        // 46.5 V on the coldest morning, over 16 · 2.9 V = 46.4 V
        assertBroken(
                broken(FORTY_EIGHT, offer(MODULE, 46.5, 32, 0.95, 1), UP),
                "openCircuitBelowBank",
                (46.4 - 46.5) / 46.4);
        assertThat(ChargerFit.of(FORTY_EIGHT, offer(MODULE, 46.3, 32, 0.95, 1), UP, POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void stepUpTakesStringsThatReachItsLowestInputInTheHeat() {
        // 14 V of one, over 28 V two: 2 · 21 V = 42 V on the coldest morning
        ArrayOffer two = offer(TWELVE, 21, 14, 1.9, 2);
        ChargerFit fit = ChargerFit.of(FORTY_EIGHT, two, UP.withMinimumInputVoltage(Voltage.volts(20)), POLICY);
        assertThat(fit.fits()).isTrue();
        assertThat(fit.array().series()).isEqualTo(2);
        assertMargin(fit, "lowestInputVoltage", (28 - 20) / 20.0);
        // three that reach 30 V have 63 V in the cold
        assertBroken(
                broken(FORTY_EIGHT, two, UP.withMinimumInputVoltage(Voltage.volts(30))),
                "openCircuitBelowBank",
                (46.4 - 63) / 46.4);
        // a controller that stands but two, 45 V · 0.98, is short of its own input in the heat: no string is left to
        // try
        // but the three, which break both
        ChargerFit none = broken(
                FORTY_EIGHT,
                two,
                UP.withMinimumInputVoltage(Voltage.volts(30)).withMaximumInputVoltage(Voltage.volts(45)));
        assertThat(none.rejection().failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly("coldestOpenCircuitVoltage", "openCircuitBelowBank");
    }

    @Test
    void stepDownMayNeedMoreThanTheChargingVoltage() {
        // 50 V take two of 32.1 V, where charging at 28 V + 4 V takes one
        ChargerFit fit = ChargerFit.of(NEED, ONE, TRACKING.withMinimumInputVoltage(Voltage.volts(50)), POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.array().series()).isEqualTo(2);
        assertMargin(fit, "lowestInputVoltage", (64.2 - 50) / 50);
    }

    @Test
    void inputPower() {
        // strings of two, 800 W each, one on each controller under 1000 W; two under 1600 W
        ChargeController small = TRACKING.withMaximumInputPower(Power.watts(1000));
        assertThat(ChargerFit.of(NEED, FOUR, small, POLICY).array().stringsOnEach())
                .containsExactly(1, 1);
        ChargerFit full = ChargerFit.of(NEED, FOUR, TRACKING.withMaximumInputPower(Power.watts(1600)), POLICY);
        assertThat(full.count()).isEqualTo(1);
        assertMargin(full, "inputPower", 0);
        assertBroken(
                broken(NEED, ONE, TRACKING.withMaximumInputPower(Power.watts(300))), "inputPower", (300 - 400) / 300.0);
    }

    @Test
    void aShuntCarriesTheShortedArray() {
        ArrayOffer one = offer(TWELVE, 24, 16.2, 1, 1);
        ChargeController shunt = DIRECT.withKind(ControllerKind.SHUNT)
                .withOutputCurrent(Current.amperes(12))
                .withMaximumInputCurrent(Current.amperes(20));

        // 10.4 A · 1.25 = 13 A go through it shorted: its 12 A count, whatever stands at its input
        ChargerFit fit = broken(twelveVolts(), one, shunt);
        assertBroken(fit, "inputCurrent", -1 / 12.0);
        assertThat(fit.rejection().failedChecks().get(0).message().toString()).contains("Short-circuited current 13 A");
    }

    @Test
    void theLoadOutputCarriesTheDirectLoads() {
        ChargeController output = TRACKING.withFunctions(List.of(ControllerFunction.LOAD_OUTPUT))
                .withLoadOutputCurrent(Current.amperes(15));
        ChargerNeed asked = NEED.withFunctions(List.of(ControllerFunction.LOAD_OUTPUT));

        assertMargin(
                ChargerFit.of(asked.withDcLoadCurrent(Current.amperes(12)), ONE, output, POLICY),
                "loadOutputCurrent",
                0.2);
        assertBroken(
                broken(asked.withDcLoadCurrent(Current.amperes(18)), ONE, output),
                "loadOutputCurrent",
                (15 - 18) / 15.0);
        // one that has none breaks that rule alone
        assertBroken(broken(asked.withDcLoadCurrent(Current.amperes(18)), ONE, TRACKING), "function");
        // and what is not asked for is not judged
        assertThat(ChargerFit.of(NEED.withDcLoadCurrent(Current.amperes(18)), ONE, output, POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void theDiversionLoadTakesHalfAgainTheSource() {
        ChargeController diverting = TRACKING.withFunctions(List.of(ControllerFunction.DIVERSION_CONTROL));
        ChargerNeed asked = NEED.withFunctions(List.of(ControllerFunction.DIVERSION_CONTROL));

        // 400 W · 1.5 = 600 W at 28 V: 21.4286 A of 60 A; 28 V / 21.4286 A = 1.306667 Ω
        ChargerFit fit = ChargerFit.of(asked, ONE, diverting, POLICY);
        Diversion diversion = Objects.requireNonNull(fit.diversion());
        assertThat(fit.fits()).isTrue();
        assertThat(diversion.source().watts()).isEqualTo(400);
        assertThat(diversion.load().watts()).isCloseTo(600, within(1e-9));
        assertThat(diversion.current().amperes()).isCloseTo(21.428571, within(1e-6));
        assertThat(diversion.resistance().ohms()).isCloseTo(1.306667, within(1e-6));
        assertMargin(fit, "diversionCurrent", 1 - 600 / 28.0 / 60);
        assertThat(diversion.hazard().action()).startsWith("Fit a load of at least 600 W, and a second");
        // four: 2400 W, 85.714 A on one controller, 42.857 A on each of two
        ChargerFit two = ChargerFit.of(asked, FOUR, diverting, POLICY);
        assertThat(two.count()).isEqualTo(2);
        assertThat(Objects.requireNonNull(two.diversion()).load().watts()).isCloseTo(2400, within(1e-9));
        assertMargin(two, "diversionCurrent", 1 - 1200 / 28.0 / 60);
        // three times the source: 1200 W, 42.857 A of 40 A
        ChargerFit much = ChargerFit.of(
                asked, ONE, diverting.withOutputCurrent(Current.amperes(40)), POLICY.withDiversionFactor(Ratio.of(3)));
        assertBroken(much, "diversionCurrent", 1 - 1200 / 28.0 / 40);
        assertThat(ChargerFit.of(NEED, ONE, diverting, POLICY).diversion()).isNull();
    }

    @ParameterizedTest
    @EnumSource
    void everyFunctionAskedForIsJudged(ControllerFunction function) {
        ChargerNeed asked = NEED.withFunctions(List.of(function));

        assertBroken(broken(asked, ONE, TRACKING.withFunctions(List.of())), "function");
        assertThat(ChargerFit.of(asked, ONE, TRACKING.withFunctions(List.of(function)), POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void energyOfAYear() {
        // two controllers, strings of one: four modules · 600 kWh · 0.95 = 2280 kWh; 2 · 1 W · 8760 h = 17.52 kWh
        ChargerFit fit = ChargerFit.of(NEED, FOUR, TRACKING.withMaximumInputVoltage(Voltage.volts(114.2)), POLICY);

        assertThat(fit.clipping().fraction()).isZero();
        assertThat(fit.clippedEnergy().kilowattHours()).isZero();
        assertThat(fit.selfConsumptionEnergy().kilowattHours()).isCloseTo(17.52, within(1e-9));
        assertThat(fit.yearlyEnergy().kilowattHours()).isCloseTo(2262.48, within(1e-9));
        assertThat(fit.energyAgainstBest()).isNull();
        // what an output of 7 A cuts off, as in the test of clipping, of 570 kWh
        ChargerFit clipped = ChargerFit.of(NEED, ONE, TRACKING.withOutputCurrent(Current.amperes(7)), POLICY);
        double lost =
                SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(523.977)).fraction();
        // the six digits of 523.977 leave five of the share
        assertThat(clipped.clippedEnergy().kilowattHours()).isCloseTo(570 * lost, within(1e-3));
    }

    @Test
    void theSheetMayNotContradictItself() {
        assertThatThrownBy(() -> TRACKING.withMinimumInputVoltage(Voltage.volts(150)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("maximumInputVoltage must be above minimumInputVoltage 150 V, but was 150 V.");
    }

    @Test
    void wholeStringsShared() {
        // seven strings on three: 3, 2, 2; Isc of the fullest 3 · 10.4 A
        ArrayLayout layout = ArrayLayout.shared(MODULE, 2, 7, 3);
        assertThat(layout.stringsOnEach()).containsExactly(3, 2, 2);
        assertThat(layout.modules()).isEqualTo(14);
        assertThat(layout.power().watts()).isEqualTo(5600);
        assertThat(layout.shortCircuitCurrent().amperes()).isCloseTo(31.2, within(1e-9));
        // (3 − 1) · 13 A = 26 A, over the 20 A of the modules; (2 − 1) · 13 A is under
        assertThat(layout.stringFuses()).isTrue();
        assertThat(ArrayLayout.shared(MODULE, 2, 6, 3).stringFuses()).isFalse();
        // 1.25 · 10.4 A = 13 A is what modules with fuses of 13 A stand
        assertThat(ArrayLayout.shared(MODULE.withSeriesFuse(Current.amperes(13)), 2, 6, 3)
                        .stringFuses())
                .isFalse();
    }

    private static ChargerFit broken(ChargerNeed need, ArrayOffer offer, ChargeController controller) {
        ChargerFit fit = ChargerFit.of(need, offer, controller, POLICY);
        assertThat(fit.fits()).isFalse();
        return fit;
    }

    private static void assertBroken(ChargerFit fit, String rule) {
        assertThat(fit.rejection().failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly(rule);
    }

    private static void assertBroken(ChargerFit fit, String rule, double margin) {
        assertBroken(fit, rule);
        assertMargin(fit, rule, margin);
    }

    private static void assertMargin(ChargerFit fit, String rule, double margin) {
        Check check = fit.checks().stream()
                .filter(limit -> limit.rule().code().equals(rule))
                .findFirst()
                .orElseThrow();
        assertThat(check.margin().orElseThrow().fraction()).as(rule).isCloseTo(margin, within(1e-9));
    }

    @Test
    void aNeedMovedToAnotherBusIsChargedAtTheVoltageOfThatBus() {
        ChargerNeed twelve = twelveVolts();
        ChargerNeed moved = twelve.withNominalVoltage(Voltage.volts(48));

        // vented lead-acid absorbs at 2.45 V a cell: 6 cells and 24
        assertThat(twelve.resolved().chargingVoltage().volts()).isCloseTo(14.7, within(1e-9));
        assertThat(moved.resolved().chargingVoltage().volts()).isCloseTo(58.8, within(1e-9));
        assertThat(moved.resolved().lowestVoltage().volts())
                .isCloseTo(4 * twelve.resolved().lowestVoltage().volts(), within(1e-9));
    }

    @Test
    void anotherOutputCurrentMovesTheCurrentsThatWereLeftOut() {
        ChargeController silent = TRACKING.withMaximumInputCurrent(null).withLoadOutputCurrent(null);

        assertThat(silent.resolved().maximumInputCurrent()).isEqualTo(Current.amperes(60));
        assertThat(silent.withOutputCurrent(Current.amperes(80)).resolved().maximumInputCurrent())
                .isEqualTo(Current.amperes(80));
        assertThat(silent.withOutputCurrent(Current.amperes(80)).resolved().loadOutputCurrent())
                .isEqualTo(Current.amperes(80));
    }

    @Test
    void aChargingVoltageThatNoBankOfThatNominalVoltageHasIsRefused() {
        assertThatThrownBy(() -> NEED.withChargingVoltage(Voltage.volts(12)))
                .hasMessage("chargingVoltage must be at least nominalVoltage 24 V, but was 12 V.");
        assertThatThrownBy(() -> NEED.withChargingVoltage(Voltage.volts(40)))
                .hasMessage("chargingVoltage must be at most 1.6 times nominalVoltage 24 V, but was 40 V.");
        assertThatThrownBy(() -> NEED.withChargingVoltage(Voltage.volts(1e12)))
                .hasMessageContaining("chargingVoltage must be from 10 V to 75 V");
    }
}
