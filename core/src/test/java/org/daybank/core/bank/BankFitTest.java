package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.junit.jupiter.api.Test;

/** Each rule broken once, the others kept. */
class BankFitTest {
    private static final BankNeed NEED = BankNeedBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .lowest(Temperature.celsius(10))
            .build();

    /** Surge is allowed up to 20 C, so that the capacity does not follow from it. */
    private static final BankPolicy POLICY = BankPolicy.standard().withSurgeRate(RatioByFamily.both(Ratio.of(20)));

    /** As many as the need calls for, and no more. */
    private static final Battery FIVE_STRINGS = Batteries.LITHIUM_12V.withMostInParallel(5);

    private static List<String> broken(BankFit fit) {
        return fit.rejection().failedChecks().stream()
                .map(check -> check.rule().code())
                .toList();
    }

    private static Check check(BankFit fit, String rule) {
        return fit.checks().stream()
                .filter(limit -> limit.rule().code().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyRuleKept() {
        BankFit fit = BankFit.of(NEED, Batteries.LITHIUM_12V, POLICY);
        BankLayout layout = Objects.requireNonNull(fit.layout());

        // 2400 Wh · 3 d / 25.6 V / 0.8 / 0.95 · 1.1 = 407.0724 Ah: five strings of 100 Ah, two in series
        assertThat(Objects.requireNonNull(fit.capacity()).requiredCapacity().ampereHours())
                .isCloseTo(407.0724, within(1e-4));
        assertThat(layout.series()).isEqualTo(2);
        assertThat(layout.parallel()).isEqualTo(5);
        assertThat(fit.fits()).isTrue();
        assertThat(fit.heated()).isFalse();
        // at the lowest voltage, 8 · 2.9 V = 23.2 V, 100 W draw 4.3103 A; five strings of 100 A give
        // 100 A · (1 + 0.9 · 4) = 460 A: margin 1 − 4.3103/460
        assertThat(check(fit, "dischargeCurrent").margin().orElseThrow().fraction())
                .isCloseTo(0.990630, within(1e-6));
    }

    @Test
    void theWorstRunSizesTheBank() {
        // twice 407.0724 Ah: nine strings
        Battery battery = Batteries.LITHIUM_12V.withMostInParallel(9);
        BankFit fit = BankFit.of(NEED.withWorstDailyEnergy(Energy.kilowattHours(4.8)), battery, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(Objects.requireNonNull(fit.layout()).parallel()).isEqualTo(9);
    }

    @Test
    void theSurgeSizesTheBankWhereItAsksTheMost() {
        // 15 360 W / 25.6 V = 600 A; at 1 C 600 Ah / 0.95 · 1.1 = 694.737 Ah: seven strings
        BankFit fit =
                BankFit.of(NEED.withSurgePower(Power.watts(15_360)), Batteries.LITHIUM_12V, BankPolicy.standard());

        assertThat(fit.fits()).isTrue();
        assertThat(Objects.requireNonNull(fit.layout()).parallel()).isEqualTo(7);
    }

    @Test
    void noWholeNumberOfBatteriesMakesTheBus() {
        BankFit fit = BankFit.of(NEED, Batteries.LITHIUM_12V.withNominalVoltage(Voltage.volts(48)), POLICY);

        assertThat(broken(fit)).containsExactly("seriesCount");
        assertThat(fit.layout()).isNull();
        assertThat(fit.capacity()).isNull();
        assertThat(check(fit, "seriesCount").message())
                .hasToString("No whole number of 48 V batteries in series gives 24 V.");
    }

    @Test
    void tooManyInSeries() {
        BankFit fit = BankFit.of(NEED, Batteries.LITHIUM_12V.withMostInSeries(1), POLICY);

        assertThat(broken(fit)).containsExactly("seriesCount");
        assertThat(check(fit, "seriesCount").message())
                .hasToString("2 batteries in series for 24 V exceed the 1 that may be connected.");
        // as many as may be connected are none too many
        assertThat(BankFit.of(NEED, Batteries.LITHIUM_12V.withMostInSeries(2), POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void lithiumBelowFreezingWithoutAHeater() {
        BankFit fit = BankFit.of(NEED.withLowest(Temperature.celsius(-5)), Batteries.LITHIUM_12V, POLICY);

        assertThat(broken(fit)).containsExactly("chargingTemperature");
        assertThat(fit.temperature()).isEqualTo(Temperature.celsius(-5));
        assertThat(check(fit, "chargingTemperature").message())
                .hasToString(
                        "Minimum bank temperature -5 °C is below the lowest charging temperature 0 °C of this battery, which has no heater.");
    }

    @Test
    void aHeaterKeepsTheCellsAtItsSetPoint() {
        BankFit fit = BankFit.of(NEED.withLowest(Temperature.celsius(-17.55)), Batteries.HEATED_12V, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.heated()).isTrue();
        assertThat(fit.temperature()).isEqualTo(Temperature.celsius(5));
        assertThat(check(fit, "chargingTemperature").message())
                .hasToString(
                        "Heated bank temperature 5 °C is not below the lowest charging temperature 0 °C of this battery.");
        // half way between 85 and 95 %: 351.5625 Ah / 0.9 · 1.1 = 429.6875 Ah
        assertThat(Objects.requireNonNull(fit.capacity()).requiredCapacity().ampereHours())
                .isCloseTo(429.6875, within(1e-9));
    }

    @Test
    void theHeatersTogetherMustMakeGoodWhatTheBoxLoses() {
        // 1.2 W/K · (5 + 40) K = 54 W; one battery of 12 V heats with 40 W, two with 80 W
        BankNeed cold = NEED.withLowest(Temperature.celsius(-40)).withDailyEnergy(Energy.wattHours(100));
        BankNeed small = BankNeedBuilder.builder()
                .dailyEnergy(Energy.wattHours(100))
                .nominalVoltage(Voltage.volts(12))
                .lowest(Temperature.celsius(-40))
                .build();
        BankFit one = BankFit.of(small, Batteries.HEATED_12V.withMostInParallel(1), POLICY);

        assertThat(broken(one)).containsExactly("heaterPower");
        assertThat(check(one, "heaterPower").value()).contains(Power.watts(54));
        assertThat(check(one, "heaterPower").limit()).contains(Power.watts(40));
        assertThat(Objects.requireNonNull(
                                BankFit.of(small, Batteries.HEATED_12V, POLICY).layout())
                        .parallel())
                .isEqualTo(2);
        assertThat(BankFit.of(cold.withWorstDailyEnergy(Energy.wattHours(100)), Batteries.HEATED_12V, POLICY)
                        .fits())
                .isTrue();
    }

    @Test
    void acidThatFreezes() {
        // discharged by half it freezes at −23.4 °C
        Battery known = Batteries.AGM_12V
                .withCapacityByTemperature(TemperatureCurve.parse("-30 Cel: 0.4; 25 Cel: 1"))
                .withMostInParallel(20);

        assertThat(broken(BankFit.of(NEED.withLowest(Temperature.celsius(-24)), known, POLICY)))
                .containsExactly("freezing");
        assertThat(broken(BankFit.of(NEED.withLowest(Temperature.celsius(-23)), known, POLICY)))
                .isEmpty();
    }

    @Test
    void capacityThatIsNotKnownInTheCold() {
        BankFit fit = BankFit.of(NEED.withLowest(Temperature.celsius(-10)), Batteries.AGM_12V, POLICY);

        assertThat(broken(fit)).containsExactly("capacityInTheCold");
        assertThat(fit.layout()).isNull();
        assertThat(check(fit, "capacityInTheCold").message())
                .hasToString("The capacity at -10 °C is not known: the data sheet states none below -7 °C.");
    }

    @Test
    void moreStringsThanTheSheetAllows() {
        BankFit fit = BankFit.of(NEED, Batteries.LITHIUM_12V.withMostInParallel(4), POLICY);

        // five are needed, and shown
        assertThat(broken(fit)).containsExactly("parallelStrings");
        assertThat(Objects.requireNonNull(fit.layout()).parallel()).isEqualTo(5);
    }

    @Test
    void moreDrawnForHoursThanTheBankGives() {
        // five strings give 100 A · (1 + 0.9 · 4) = 460 A; 10.6 kW / 23.2 V = 456.9 A, 10.7 kW draw 461.207 A
        assertThat(broken(BankFit.of(NEED.withContinuousPower(Power.kilowatts(10.6)), FIVE_STRINGS, POLICY)))
                .isEmpty();
        BankFit fit = BankFit.of(NEED.withContinuousPower(Power.kilowatts(10.7)), FIVE_STRINGS, POLICY);
        assertThat(broken(fit)).containsExactly("dischargeCurrent");
        assertThat(check(fit, "dischargeCurrent").value().orElseThrow().baseValue())
                .isCloseTo(461.207, within(1e-3));
        // a sixth string brings 90 A more
        BankFit six = BankFit.of(NEED.withContinuousPower(Power.kilowatts(10.7)), Batteries.LITHIUM_12V, POLICY);
        assertThat(six.fits()).isTrue();
        assertThat(Objects.requireNonNull(six.layout()).parallel()).isEqualTo(6);
    }

    @Test
    void aHarderStartThanTheBankGives() {
        // five strings give 200 A · (1 + 0.9 · 4) = 920 A for seconds; 21.4 kW / 23.2 V = 922.4 A, 21.3 kW draw 918.1 A
        assertThat(broken(BankFit.of(NEED.withSurgePower(Power.kilowatts(21.4)), FIVE_STRINGS, POLICY)))
                .containsExactly("surgeCurrent");
        assertThat(broken(BankFit.of(NEED.withSurgePower(Power.kilowatts(21.3)), FIVE_STRINGS, POLICY)))
                .isEmpty();
    }

    @Test
    void aStartThatPullsTheBusUnderTheCutOff() {
        // half empty and cool, 12 mΩ · 2 / 5 · 1.5 = 7.2 mΩ; 25.6 V − I · 7.2 mΩ, with I = P / 21 V
        // 13 kW: 619.048 A · 7.2 mΩ = 4.457 V leave 21.143 V; 14 kW: 666.667 A · 7.2 mΩ = 4.8 V leave 20.8 V
        BankNeed need = NEED.withCutOffVoltage(Voltage.volts(21));

        assertThat(broken(BankFit.of(need.withSurgePower(Power.kilowatts(13)), FIVE_STRINGS, POLICY)))
                .isEmpty();
        BankFit fit = BankFit.of(need.withSurgePower(Power.kilowatts(14)), FIVE_STRINGS, POLICY);
        assertThat(broken(fit)).containsExactly("surgeSag");
        assertThat(check(fit, "surgeSag").margin().orElseThrow().fraction()).isCloseTo((20.8 - 21) / 21, within(1e-9));
        // six strings: 666.667 A · 12 mΩ · 2 / 6 · 1.5 = 4 V leave 21.6 V
        BankFit six = BankFit.of(need.withSurgePower(Power.kilowatts(14)), Batteries.LITHIUM_12V, POLICY);
        assertThat(six.fits()).isTrue();
        assertThat(check(six, "surgeSag").value().orElseThrow().baseValue()).isCloseTo(21.6, within(1e-9));
    }

    @Test
    void theCableSagsToo() {
        // 13 kW as above, and 619.048 A through 1 mΩ: 21.143 V − 0.619 V = 20.524 V
        BankNeed need = NEED.withCutOffVoltage(Voltage.volts(21)).withSurgePower(Power.kilowatts(13));
        BankFit fit = BankFit.of(need.withCableResistance(Resistance.milliohms(1)), FIVE_STRINGS, POLICY);

        assertThat(broken(fit)).containsExactly("surgeSag");
        assertThat(check(fit, "surgeSag").value().orElseThrow().baseValue())
                .isCloseTo(25.6 - 13_000 / 21.0 * 0.0082, within(1e-9));
    }

    @Test
    void manyLeadAcidStringsAreAdvisedAgainstButFit() {
        // 660 Ah as below take three strings of 250 Ah, 1.5 times the load 990 Ah and four
        BankNeed three = NEED.withLowest(Temperature.celsius(27));
        BankNeed four = three.withWorstDailyEnergy(Energy.kilowattHours(3.6));
        BankFit few = BankFit.of(three, Batteries.VENTED_6V, POLICY);
        BankFit many = BankFit.of(four, Batteries.VENTED_6V, POLICY);

        assertThat(few.advice())
                .extracting(check -> check.rule().code(), Check::passed)
                .containsExactly(tuple("leadAcidStrings", true));
        assertThat(many.fits()).isTrue();
        assertThat(Objects.requireNonNull(many.layout()).parallel()).isEqualTo(4);
        assertThat(many.advice()).extracting(Check::passed).containsExactly(false);
        assertThat(many.advice().get(0).message())
                .hasToString(
                        "4 parallel strings exceed the 3 advised for lead-acid batteries: they charge unevenly, and one string of larger cells is the better bank.");
        assertThat(BankFit.of(four, Batteries.VENTED_6V, POLICY.withAdvisedLeadAcidStrings(4))
                        .advice())
                .allMatch(Check::passed);
        assertThat(BankFit.of(four, Batteries.LITHIUM_12V, POLICY).advice()).isEmpty();
    }

    @Test
    void coolLithiumTakesLittleCharge() {
        // five strings of 100 Ah at 10 °C: 0.3 C, 30 A each; 30 A · (1 + 0.9 · 4) = 138 A
        assertThat(Objects.requireNonNull(
                                BankFit.of(NEED, Batteries.LITHIUM_12V, POLICY).coldChargeCurrent())
                        .amperes())
                .isCloseTo(138, within(1e-9));
    }

    @Test
    void aBankThatJustReachesTheNeedGetsNoStringForRounding() {
        // 300 Ah · 0.8 · 25.6 V / 3 d / 1.1 = 1861.8182 Wh a day at 25 °C take exactly three strings
        BankNeed exact = BankNeedBuilder.builder()
                .dailyEnergy(Energy.wattHours(300 * 0.8 * 25.6 / 3 / 1.1 * (1 + 1e-12)))
                .nominalVoltage(Voltage.volts(24))
                .lowest(Temperature.celsius(25))
                .build();

        assertThat(Objects.requireNonNull(
                                BankFit.of(exact, Batteries.LITHIUM_12V, POLICY).layout())
                        .parallel())
                .isEqualTo(3);
    }

    @Test
    void aFastDischargeTakesMoreStrings() {
        // 400 W · 6 h: 2400 Wh at 24 V are 100 Ah a day, 300 Ah over three days; / 0.5 · 1.1 = 660 Ah at 27 °C;
        // 400 W / 24 V = 16.67 A: three strings of 250 Ah at 5.56 A each have, log-log between 2.5 A (250) and 11.25 A
        // (225),
        // 250 · (225/250)^(ln(5.556/2.5) / ln(4.5)) = 236.4 Ah: 709 Ah are enough
        BankNeed slow = NEED.withLowest(Temperature.celsius(27)).withRunningPower(Power.watts(400));
        assertThat(Objects.requireNonNull(
                                BankFit.of(slow, Batteries.VENTED_6V, POLICY).layout())
                        .parallel())
                .isEqualTo(3);
        // 2400 W are 100 A: at 33.3 A a string 3 · 189 = 567 Ah fall short; at 25 A four have, between 11.25 A (225)
        // and
        // 37 A (185), 225 · (185/225)^(ln(25/11.25) / ln(37/11.25)) = 197.3 Ah: 789 Ah
        assertThat(Objects.requireNonNull(
                                BankFit.of(slow.withRunningPower(Power.watts(2400)), Batteries.VENTED_6V, POLICY)
                                        .layout())
                        .parallel())
                .isEqualTo(4);
    }

    @Test
    void atTheSetPointNoHeaterRuns() {
        BankFit fit = BankFit.of(NEED.withLowest(Temperature.celsius(5)), Batteries.HEATED_12V, POLICY);

        assertThat(fit.fits()).isTrue();
        assertThat(fit.heated()).isFalse();
        assertThat(fit.checks()).extracting(check -> check.rule().code()).doesNotContain("heaterPower");
    }
}
