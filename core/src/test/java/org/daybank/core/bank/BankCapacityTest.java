package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class BankCapacityTest {
    private static final BankDemand LITHIUM_24V = BankDemandBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .lowest(Temperature.celsius(10))
            .build();

    @Test
    void lithiumBankForThreeDays() {
        BankCapacity capacity = BankCapacity.needed(LITHIUM_24V, BankPolicy.standard());

        // 8 cells · 3.2 V = 25.6 V
        assertThat(capacity.trueNominal().volts()).isEqualTo(25.6);
        // 2400 Wh · 3 d / 25.6 V = 281.25 Ah
        assertThat(capacity.autonomyCharge().ampereHours()).isCloseTo(281.25, within(1e-9));
        // 281.25 Ah / 0.8 = 351.5625 Ah
        assertThat(capacity.byDepth().ampereHours()).isCloseTo(351.5625, within(1e-9));
        // 2400 Wh / 25.6 V / 0.8 = 117.1875 Ah: less, so depth governs
        assertThat(capacity.byDailyDepth().ampereHours()).isCloseTo(117.1875, within(1e-9));
        assertThat(capacity.governing()).isEqualTo(BankCapacity.Governing.DEPTH);
        // published: 95 % at 10 °C; 351.5625 Ah / 0.95 · 1.1 = 407.0724 Ah
        assertThat(capacity.temperatureFactor().fraction()).isCloseTo(0.95, within(1e-12));
        assertThat(capacity.requiredCapacity().ampereHours()).isCloseTo(407.0724, within(1e-4));
        // a worn bank holds 80 %: 0.8 / 0.8 = all of it
        assertThat(capacity.wornDepth().fraction()).isCloseTo(1, within(1e-12));
        // 2400 Wh / 25.6 V / 24 h = 3.90625 A; 407.0724 Ah / 3.90625 A = 104.2105 h
        assertThat(capacity.dischargeTime().hours()).isCloseTo(104.2105, within(1e-4));
    }

    @Test
    void leadAcidBankIsGovernedByTheDailyDepthWhenAutonomyIsShort() {
        BankDemand demand = LITHIUM_24V
                .withChemistry(Chemistry.AGM)
                .withLowest(Temperature.celsius(16))
                .withTemperatureFactor(Ratio.of(0.9))
                .withRunningCurrent(Current.amperes(5));
        BankPolicy policy = BankPolicy.standard().withAutonomy(TimeSpan.days(1));

        BankCapacity capacity = BankCapacity.needed(demand, policy);

        // 12 cells · 2 V = 24 V; 2400 Wh / 24 V = 100 Ah a day
        // by depth 100 / 0.5 = 200 Ah, by daily depth 100 / 0.2 = 500 Ah
        assertThat(capacity.governing()).isEqualTo(BankCapacity.Governing.DAILY_DEPTH);
        // 500 Ah / 0.9 · 1.1 = 611.11 Ah
        assertThat(capacity.requiredCapacity().ampereHours()).isCloseTo(611.111, within(1e-3));
    }

    @Test
    void surgeGovernsAShortHardStart() {
        BankDemand demand = LITHIUM_24V.withSurgeCurrent(Current.amperes(600));

        BankCapacity capacity = BankCapacity.needed(demand, BankPolicy.standard());

        // 600 A at 1 C asks for 600 Ah, more than the 351.6 Ah by depth; 600 / 0.95 · 1.1 = 694.737 Ah
        assertThat(capacity.governing()).isEqualTo(BankCapacity.Governing.SURGE);
        assertThat(capacity.requiredCapacity().ampereHours()).isCloseTo(694.737, within(1e-3));
    }

    @Test
    void wornBankMayBeAskedToCarryTheWholeAutonomy() {
        BankPolicy deep = BankPolicy.standard().withDepthOfDischarge(RatioByFamily.both(Ratio.of(0.9)));

        // 0.9 / 0.8 = 1.125: a worn bank would run flat before the autonomy is over
        assertThat(BankCapacity.needed(LITHIUM_24V, deep).wornDepth().fraction())
                .isCloseTo(1.125, within(1e-12));
        // asked to carry it, the depth is held to the 0.8 that is left: 281.25 / 0.8 = 351.5625 Ah
        BankCapacity careful = BankCapacity.needed(LITHIUM_24V, deep.withWornBankCarriesAutonomy(true));
        assertThat(careful.byDepth().ampereHours()).isCloseTo(351.5625, within(1e-9));
        assertThat(careful.wornDepth().fraction()).isCloseTo(1, within(1e-12));
    }

    @Test
    void belowThePublishedCurveTheDataSheetIsAskedFor() {
        assertThatThrownBy(() -> BankDemandBuilder.builder()
                        .dailyEnergy(Energy.kilowattHours(2.4))
                        .nominalVoltage(Voltage.volts(24))
                        .chemistry(Chemistry.AGM)
                        .lowest(Temperature.celsius(-18))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("temperatureFactor is required")
                .hasMessageContaining("-7 °C")
                .hasMessageContaining("-18 °C");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThatThrownBy(() -> BankDemandBuilder.builder()
                        .dailyEnergy(Energy.wattHours(-5))
                        .nominalVoltage(Voltage.volts(36))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/dailyEnergy OUT_OF_RANGE",
                                        "/chemistry MISSING",
                                        "/lowest MISSING",
                                        "/nominalVoltage OUT_OF_RANGE"))
                .hasMessageContaining("nominalVoltage must be 12 V, 24 V or 48 V, but was 36 V.");
    }

    @Test
    void workingShowsTheNumbersThatWereUsed() {
        BankCapacity capacity = BankCapacity.needed(LITHIUM_24V, BankPolicy.standard());

        assertThat(capacity.working().steps().get(0).substituted()).isEqualTo("2.4 kWh · 3 / 25.6 V");
        assertThat(capacity.working().steps().get(0).result()).isEqualTo("281.3 Ah");
        assertThat(capacity.working().steps())
                .allSatisfy(step -> assertThat(step.source()).isNotBlank());
    }

    @Test
    void ofEqualsTheFirstGoverns() {
        // one day's autonomy at the daily depth, 0.8, asks for what the day does: 93.75 Ah / 0.8 = 117.1875 Ah
        BankPolicy oneDay = BankPolicy.standard().withAutonomy(TimeSpan.days(1));
        assertThat(BankCapacity.needed(LITHIUM_24V, oneDay).governing()).isEqualTo(BankCapacity.Governing.DEPTH);
        // 351.5625 A at 1 C ask for what three days at 0.8 do
        BankDemand start = LITHIUM_24V.withSurgeCurrent(Current.amperes(351.5625));
        assertThat(BankCapacity.needed(start, BankPolicy.standard()).governing())
                .isEqualTo(BankCapacity.Governing.DEPTH);
        // half a day: 58.59375 Ah; a start of 117.1875 A asks for what the day does
        BankPolicy halfDay = BankPolicy.standard().withAutonomy(TimeSpan.days(0.5));
        BankDemand smaller = LITHIUM_24V.withSurgeCurrent(Current.amperes(117.1875));
        assertThat(BankCapacity.needed(smaller, halfDay).governing()).isEqualTo(BankCapacity.Governing.DAILY_DEPTH);
    }
}
