package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** A changed input calculates as one built anew: what was left out is never kept from before the change. */
class BankInputsTest {
    private static final BankDemand DEMAND = BankDemandBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .lowest(Temperature.celsius(25))
            .build();

    private static final BankNeed NEED = BankNeedBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .lowest(Temperature.celsius(10))
            .build();

    @Test
    void tenTimesTheEnergyNeedsTenTimesTheCapacity() {
        Charge small = BankCapacity.needed(DEMAND, BankPolicy.standard()).requiredCapacity();
        Charge large = BankCapacity.needed(DEMAND.withDailyEnergy(Energy.kilowattHours(24)), BankPolicy.standard())
                .requiredCapacity();

        // 2.4 kWh · 3 d / 25.6 V / 0.8 · 1.1, nothing lost at 25 °C
        assertThat(small.ampereHours()).isCloseTo(2400.0 * 3 / 25.6 / 0.8 * 1.1, within(1e-9));
        assertThat(large.ampereHours()).isCloseTo(10 * small.ampereHours(), within(1e-6));
        // 24 kWh over 24 h at 25.6 V
        assertThat(DEMAND.withDailyEnergy(Energy.kilowattHours(24))
                        .resolved()
                        .runningCurrent()
                        .amperes())
                .isCloseTo(1000 / 25.6, within(1e-9));
    }

    @Test
    void theTemperatureFactorFollowsTemperatureAndChemistry() {
        assertThat(DEMAND.withLowest(Temperature.celsius(0)))
                .extracting(demand -> demand.resolved().temperatureFactor())
                .isEqualTo(Chemistry.LITHIUM_IRON_PHOSPHATE
                        .traits()
                        .capacityByTemperature()
                        .at(Temperature.celsius(0))
                        .orElseThrow());
        assertThat(DEMAND.temperatureFactor()).isNull();
    }

    @Test
    void twiceTheEnergySelectsTwiceTheBank() {
        BankLayout one =
                BankFit.of(NEED, Batteries.LITHIUM_12V, BankPolicy.standard()).layout();
        BankNeed twice = NEED.withDailyEnergy(Energy.kilowattHours(4.8));
        BankNeed anew = BankNeedBuilder.builder()
                .dailyEnergy(Energy.kilowattHours(4.8))
                .nominalVoltage(Voltage.volts(24))
                .lowest(Temperature.celsius(10))
                .build();

        assertThat(twice).isEqualTo(anew);
        assertThat(twice.resolved().worstDailyEnergy()).isEqualTo(Energy.kilowattHours(4.8));
        assertThat(twice.resolved().surgePower().watts()).isCloseTo(200, within(1e-9));
        assertThat(BankFit.of(twice, Batteries.LITHIUM_12V, BankPolicy.standard())
                        .layout()
                        .parallel())
                .isGreaterThan(one.parallel());
    }

    @Test
    void aNeedOfADemandLeavesOutWhatTheDemandLeavesOut() {
        BankNeed need = BankNeed.of(DEMAND);

        assertThat(need.worstDailyEnergy()).isNull();
        assertThat(need.runningPower()).isNull();
        assertThat(need.surgePower()).isNull();
        // 2400 Wh / 24 h either way
        assertThat(need.resolved().runningPower().watts()).isCloseTo(100, within(1e-9));
    }

    @Test
    void aBatteryOfAnotherChemistryHasTheLimitsOfThatChemistry() {
        Battery agm = Batteries.AGM_12V.withColdestCharge(null).withChargeRateByTemperature(null);
        Battery lithium = agm.withChemistry(Chemistry.LITHIUM_IRON_PHOSPHATE);

        assertThat(agm.maximumChargeCurrentAt(Temperature.celsius(-10)).amperes())
                .isPositive();
        assertThat(lithium.maximumChargeCurrentAt(Temperature.celsius(-10))).isEqualTo(Current.ZERO);
        assertThat(lithium.resolved().coldestCharge()).isEqualTo(Temperature.celsius(0));
    }

    @Test
    void aBatteryOfTwiceTheCapacityGivesTwiceTheCurrent() {
        Battery silent = Batteries.AGM_12V
                .withMaximumChargeCurrent(null)
                .withMaximumDischargeCurrent(null)
                .withPeakDischargeCurrent(null)
                .withCapacity(DischargeCurve.parse("20 h: 100 Ah"));
        Battery twice = silent.withCapacity(DischargeCurve.parse("20 h: 200 Ah"));

        // drawn in one hour; twice that for seconds; charged with 0.25 C
        assertThat(silent.resolved().maximumDischargeCurrent().amperes()).isCloseTo(100, within(1e-9));
        assertThat(twice.resolved().maximumDischargeCurrent().amperes()).isCloseTo(200, within(1e-9));
        assertThat(twice.resolved().peakDischargeCurrent().amperes()).isCloseTo(400, within(1e-9));
        assertThat(twice.resolved().maximumChargeCurrent().amperes()).isCloseTo(50, within(1e-9));
        assertThat(twice.withNominalVoltage(Voltage.volts(24))
                        .withMostInSeries(null)
                        .resolved()
                        .mostInSeries())
                .isEqualTo(2);
    }

    @Test
    void absurdValuesAreRefused() {
        refused("/price", () -> Batteries.AGM_12V.withPrice(Money.of("-1", "EUR")));
        refused("/resistance", () -> Batteries.AGM_12V.withResistance(Resistance.ohms(1e6)));
        refused("/heater", () -> Batteries.AGM_12V.withHeater(Power.watts(1e9)));
        refused("/maximumChargeCurrent", () -> Batteries.AGM_12V.withMaximumChargeCurrent(Current.amperes(-5)));
        refused("/runningPower", () -> NEED.withRunningPower(Power.watts(-455)));
        refused("/surgePower", () -> NEED.withSurgePower(Power.kilowatts(1e6)));
        refused("/cycles/0", () -> new BankUse(Collections.singletonList(null), null));
        refused("/points/0", () -> new DischargeCurve(Collections.singletonList(null)));
    }

    private static void refused(String path, org.assertj.core.api.ThrowableAssert.ThrowingCallable construction) {
        assertThatThrownBy(construction)
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path())
                                .containsExactly(path));
    }
}
