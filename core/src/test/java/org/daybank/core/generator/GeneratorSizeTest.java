package org.daybank.core.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.working.Check;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

class GeneratorSizeTest {
    private static final GeneratorPolicy POLICY = GeneratorPolicy.standard();

    /** Of a few products and quotients of doubles. */
    private static final double ROUNDING = 1e-9;

    private static Check check(GeneratorSize size, String rule) {
        return size.checks().stream()
                .filter(check -> check.rule().code().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void isTheNextSizeThatCarriesChargerAndLoadsAtTheSite() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill(), POLICY);

        // 80 A · 50 V = 4 kW into the bank, / 0.8 = 5 kW at the charger, / 0.8 = 6.25 kVA; with 750 W of loads 7 kVA
        assertThat(size.chargePower()).isEqualTo(Power.kilowatts(4));
        assertThat(size.chargerInput()).isEqualTo(Power.kilowatts(5));
        assertThat(size.askedPower().watts()).isCloseTo(7000, within(ROUNDING));
        // 600 m: 1 − 2 · 0.035 = 0.93; 36 °C: 11 K over 25 °C, 1 − 2 · 0.01 = 0.98
        assertThat(size.siteFactor().fraction()).isCloseTo(0.9114, within(1e-12));
        // 5.75 kW at most 80 %: 7187.5 W are more than 7 kVA; / 0.9114 = 7886.2 W, next 8 kW
        assertThat(size.requiredRating().watts()).isCloseTo(7187.5 / 0.9114, within(ROUNDING));
        assertThat(size.sets()).isEqualTo(1);
        assertThat(size.rating()).isEqualTo(Power.kilowatts(8));
        assertThat(size.sitePower().watts()).isCloseTo(7291.2, within(ROUNDING));
        // (5000 + 250) W / 7291.2 W
        assertThat(size.meanLoadShare().fraction()).isCloseTo(0.72004608, within(1e-8));
        assertThat(size.checks()).allMatch(Check::passed);
    }

    @Test
    void runsBurnsAndWears() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill(), POLICY);

        // January: 42.5 kWh / (4 + 0.25) kW = 10 h; 5.25 kW · 10 h = 52.5 kWh;
        // 0.246 · 52.5 + 0.081 · 8 · 10 = 12.915 + 6.48 = 19.395 L. February twice as much.
        GeneratorMonth january = size.months().get(0);
        assertThat(january.month()).isEqualTo(Month.JANUARY);
        assertThat(january.hours().hours()).isCloseTo(10, within(ROUNDING));
        assertThat(january.made().kilowattHours()).isCloseTo(52.5, within(ROUNDING));
        assertThat(january.fuel().litres()).isCloseTo(19.395, within(ROUNDING));
        assertThat(size.months().get(1).fuel().litres()).isCloseTo(38.79, within(ROUNDING));
        assertThat(size.months().get(2).hours()).isEqualTo(TimeSpan.ZERO);
        assertThat(size.yearlyHours().hours()).isCloseTo(30, within(ROUNDING));
        assertThat(size.yearlyMade().kilowattHours()).isCloseTo(157.5, within(ROUNDING));
        assertThat(size.yearlyFuel().litres()).isCloseTo(58.185, within(ROUNDING));
        // 58.185 L · 1.70 EUR = 98.91 EUR; 8 kW · 600 EUR = 4800 EUR; · 30 h / 5000 h = 28.80 EUR
        assertThat(size.yearlyFuelCost()).isEqualTo(Money.of("98.91", "EUR"));
        assertThat(size.price()).isEqualTo(Money.of("4800", "EUR"));
        assertThat(size.yearlyWear()).isEqualTo(Money.of("28.80", "EUR"));
    }

    @Test
    void handsItsThresholdsAndItsFuelToTheSimulation() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill(), POLICY);
        EngineRule rule = size.rule();

        assertThat(rule.power()).isEqualTo(size.sitePower());
        assertThat(rule.startBelow()).isEqualTo(Ratio.of(0.4));
        assertThat(rule.stopAbove()).isEqualTo(Ratio.of(0.8));
        assertThat(rule.chargerEfficiency()).isEqualTo(Ratio.of(0.8));
        // the rule counts by the power at the site, the curve by the rating: 0.081 L/(h·kW) · 8 kW = 0.648 L/h either
        // way
        assertThat(rule.litresPerHourPerKilowatt() * rule.power().kilowatts()).isCloseTo(0.648, within(ROUNDING));
    }

    @Test
    void chargesWithWhatTheChargerGivesWhereThatIsLess() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill().withChargerInput(Power.kilowatts(2)), POLICY);

        // 2 kW · 0.8 / 50 V = 32 A
        assertThat(size.chargeCurrent().amperes()).isCloseTo(32, within(ROUNDING));
        assertThat(check(size, "bankChargeCurrent").margin()).contains(Ratio.of(0.6));
    }

    @Test
    void neverChargesBeyondTheBank() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill().withChargerInput(Power.kilowatts(20)), POLICY);

        assertThat(size.chargeCurrent()).isEqualTo(Current.amperes(80));
    }

    @Test
    void takesSeveralSetsWhereTheLargestIsTooSmall() {
        // 2 kA · 50 V = 100 kW at 80 %: 125 kW, over the largest of 100 kW; 62.5 kW each, next 63 kW
        GeneratorSize size = GeneratorSize.of(Needs.lossless(2000), POLICY);

        assertThat(size.siteFactor()).isEqualTo(Ratio.ONE);
        assertThat(size.sets()).isEqualTo(2);
        assertThat(size.rating()).isEqualTo(Power.kilowatts(63));
        assertThat(size.price()).isEqualTo(Money.of("75600", "EUR"));
    }

    @Test
    void saysWhenEvenTheSmallestIsTooLarge() {
        // 4 A · 50 V = 200 W, a quarter of 800 W
        Check least = check(GeneratorSize.of(Needs.lossless(4), POLICY), "leastLoad");

        assertThat(least.passed()).isFalse();
        assertThat(least.value()).contains(Power.watts(200));
        assertThat(least.limit()).contains(Power.watts(240));
        assertThat(least.message()).asString().contains("200 W", "240 W", "30 %");
    }

    @Test
    void warnsWhenAMonthHasTooFewHours() {
        // 100 A · 50 V = 5 kW: 3400 kWh take 680 h, more than the 672 of February; 3500 kWh take 700 of January's 744 h
        GeneratorNeed dark =
                Needs.lossless(100).withMonthlyShortfall(Needs.kilowattHours(3500, 3400, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
        GeneratorSize size = GeneratorSize.of(dark, POLICY);

        assertThat(check(size, "hoursOfMonth").passed()).isFalse();
        assertThat(check(size, "hoursOfMonth").message()).asString().contains("February");
        assertThat(size.hazards())
                .extracting(hazard -> hazard.code().code())
                .containsExactly("generatorExhaust", "generatorTransfer", "generatorHours");
        assertThat(GeneratorSize.of(Needs.uphill(), POLICY).hazards())
                .extracting(hazard -> hazard.code().code())
                .containsExactly("generatorExhaust", "generatorTransfer");
    }

    @Test
    void belowTheSeaAndInTheColdNothingIsGained() {
        GeneratorNeed low = Needs.lossless(100).withElevation(Length.metres(-400));

        assertThat(GeneratorSize.of(low, POLICY).siteFactor()).isEqualTo(Ratio.ONE);
    }

    @Test
    void withoutAKnownShortfallItHasNoHours() {
        GeneratorSize size = GeneratorSize.of(Needs.lossless(100), POLICY);

        assertThat(size.yearlyHours()).isEqualTo(TimeSpan.ZERO);
        assertThat(size.yearlyFuelCost()).isEqualTo(Money.of("0", "EUR"));
    }

    @Test
    void showsTheNumbersItUsed() {
        assertThat(GeneratorSize.of(Needs.uphill(), POLICY).working().steps())
                .extracting(Step::name, Step::substituted, Step::result)
                .contains(
                        tuple("power asked", "50 V · 80 A / (0.8 · 0.8) + 750 W", "7 kW"),
                        tuple("size", "1 · at least 7.886 kW", "8 kW"));
    }

    @Test
    void refusesEverythingThatIsWrongAtOnce() {
        assertThatThrownBy(() -> GeneratorNeedBuilder.builder()
                        .maximumChargeCurrent(Current.ZERO)
                        .meanLoads(Power.watts(10))
                        .chargerInput(Power.ZERO)
                        .monthlyShortfall(Needs.kilowattHours(1, -1))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly(
                                        "/chargingVoltage",
                                        "/maximumChargeCurrent",
                                        "/chargerInput",
                                        "/monthlyShortfall",
                                        "/monthlyShortfall/1",
                                        "/meanLoads"));
    }

    @Test
    void refusesAPolicyThatContradictsItself() {
        assertThatThrownBy(() -> POLICY.with(policy -> policy.leastLoadShare(Ratio.of(0.5))
                        .mostLoadShare(Ratio.of(0.4))
                        .startBelow(Ratio.of(0.8))
                        .pricePerKilowatt(Money.of("500", "USD"))))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly("/mostLoadShare", "/stopAbove", "/pricePerKilowatt"));
        assertThatThrownBy(() -> POLICY.withServiceLife(TimeSpan.hours(1)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("serviceLife must be from 100 h to 2500 d, but was 1 h.");
    }

    @Test
    void comparesItselfWithMoreModules() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill(), POLICY);
        MoreModules more =
                new MoreModules(Money.of("250", "EUR"), Energy.kilowattHours(8.5), TimeSpan.years(10), Ratio.of(0.05));
        EngineOrModules compared = EngineOrModules.of(size, more);

        // 85 kWh / 8.5 kWh = 10 modules, 2500 EUR; capital recovery factor of 5 % over 10 years in published tables:
        // 0.1295
        // (0.12950457…), so 323.76 EUR a year against 98.91 + 28.80 = 127.71 EUR
        assertThat(compared.modules()).isEqualTo(10);
        assertThat(compared.modulesPrice()).isEqualTo(Money.of("2500", "EUR"));
        assertThat(more.annuityFactor()).isCloseTo(0.1295, within(5e-5));
        assertThat(compared.modulesYearly()).isEqualTo(Money.of("323.76", "EUR"));
        assertThat(compared.engineYearly()).isEqualTo(Money.of("127.71", "EUR"));
        assertThat(compared.cheaper()).isEqualTo(WinterSource.ENGINE);
        assertThat(compared.saving()).isEqualTo(Money.of("196.05", "EUR"));
        assertThat(compared.working().steps())
                .extracting(Step::name, Step::substituted, Step::result)
                .contains(
                        tuple("modules instead", "85 kWh / 8.5 kWh", "10"),
                        tuple("yearly cost of the engine", "98.91 EUR + 28.80 EUR", "127.71 EUR"));
    }

    @Test
    void modulesAreCheaperWhereTheyCostLittle() {
        // without interest 10 · 100 EUR / 20 years = 50 EUR
        EngineOrModules compared = EngineOrModules.of(
                GeneratorSize.of(Needs.uphill(), POLICY),
                new MoreModules(Money.of("100", "EUR"), Energy.kilowattHours(8.5), TimeSpan.years(20), Ratio.ZERO));

        assertThat(compared.modulesYearly()).isEqualTo(Money.of("50", "EUR"));
        assertThat(compared.cheaper()).isEqualTo(WinterSource.MODULES);
        assertThat(compared.saving()).isEqualTo(Money.of("77.71", "EUR"));
    }

    @Test
    void doesNotCompareTwoCurrencies() {
        GeneratorSize size = GeneratorSize.of(Needs.uphill(), POLICY);

        assertThatThrownBy(() -> EngineOrModules.of(
                        size, new MoreModules(Money.of("100", "USD"), Energy.kilowattHours(8), null, null)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("EUR")
                .hasMessageContaining("100.00 USD");
    }

    @Test
    void theEngineIsTakenWhereBothCostTheSame() {
        // without interest 10 · 127.71 EUR / 10 years
        EngineOrModules compared = EngineOrModules.of(
                GeneratorSize.of(Needs.uphill(), POLICY),
                new MoreModules(Money.of("127.71", "EUR"), Energy.kilowattHours(8.5), TimeSpan.years(10), Ratio.ZERO));

        assertThat(compared.modulesYearly()).isEqualTo(compared.engineYearly());
        assertThat(compared.cheaper()).isEqualTo(WinterSource.ENGINE);
        assertThat(compared.saving()).isEqualTo(Money.of("0", "EUR"));
    }

    @Test
    void upToAMillionModulesAreCounted() {
        // 1000 MWh in January, with modules of 1 kWh; of 1 kWh less a thousandth more than a million
        GeneratorSize size = GeneratorSize.of(
                Needs.lossless(2000)
                        .withMonthlyShortfall(Needs.kilowattHours(1_000_000, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)),
                POLICY);
        MoreModules million = new MoreModules(Money.of("1", "EUR"), Energy.kilowattHours(1), null, null);

        assertThat(EngineOrModules.of(size, million).modules()).isEqualTo(1_000_000);
        assertThatThrownBy(() -> EngineOrModules.of(size, million.withModuleYield(Energy.wattHours(999))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "moduleYield must be large enough for a million modules to cover a shortfall of 1000 MWh, but was 999 Wh.");
    }

    @Test
    void aSizeThatJustDoesIsTaken() {
        // 128 A · 50 V = 6400 W at 80 %: 8 kW
        assertThat(GeneratorSize.of(Needs.lossless(128), POLICY).rating()).isEqualTo(Power.kilowatts(8));
    }

    @Test
    void pricesMayBeNothingButNotLess() {
        Money nothing = Money.of("0", "EUR");
        GeneratorPolicy gift =
                POLICY.with(policy -> policy.fuelPricePerLitre(nothing).pricePerKilowatt(nothing));
        assertThat(GeneratorSize.of(Needs.uphill(), gift).yearlyFuelCost()).isEqualTo(nothing);
        assertThat(new MoreModules(nothing, Energy.kilowattHours(1), null, null).pricePerModule())
                .isEqualTo(nothing);
        assertThatThrownBy(() -> new MoreModules(Money.of("-1", "EUR"), Energy.ZERO, null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("pricePerModule must be from 0.00 EUR to 10000000000.00 EUR, but was -1.00 EUR. "
                        + "moduleYield must be from 1 Wh to 1 MWh, but was 0 Wh.");
        assertThatThrownBy(() -> new MoreModules(null, Energy.kilowattHours(1), null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("pricePerModule is required.");
        assertThatThrownBy(() -> new MoreModules(nothing, Energy.kilowattHours(1), null, Ratio.of(0.6)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("interest must be from 0 to 0.5, but was 0.6.");
        assertThatThrownBy(() -> Needs.uphill().withChargerEfficiency(Ratio.of(0.4)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("chargerEfficiency must be from 0.5 to 1, but was 0.4.");
    }
}
