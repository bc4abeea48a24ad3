package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BankNeedTest {
    private static final BankNeed NEED = BankNeedBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .lowest(Temperature.celsius(10))
            .build();

    @Test
    void withoutMoreEveryDayIsTheMeanDaySpreadEvenly() {
        // 2400 Wh / 24 h = 100 W
        assertThat(NEED.resolved().worstDailyEnergy()).isEqualTo(NEED.dailyEnergy());
        assertThat(NEED.resolved().runningPower().watts()).isCloseTo(100, within(1e-9));
        assertThat(NEED.resolved().continuousPower()).isEqualTo(NEED.resolved().runningPower());
        assertThat(NEED.resolved().surgePower()).isEqualTo(NEED.resolved().runningPower());
    }

    @ParameterizedTest
    @CsvSource({
        // 1.2 W/K · (5 °C − T)
        "-17.55, 27.06",
        "0, 6",
        "5, 0",
        "20, 0"
    })
    void theHeaterMakesGoodWhatTheBoxLoses(double outside, double watts) {
        assertThat(NEED.heaterPower(Temperature.celsius(outside)).watts()).isCloseTo(watts, within(1e-9));
    }

    @Test
    void aDemandOfOneChemistryIsTheSameNeedInWatts() {
        BankNeed need = BankNeed.of(BankDemandBuilder.builder()
                .dailyEnergy(Energy.kilowattHours(2.4))
                .nominalVoltage(Voltage.volts(24))
                .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
                .lowest(Temperature.celsius(10))
                .runningCurrent(Current.amperes(10))
                .surgeCurrent(Current.amperes(100))
                .build());

        // 10 A and 100 A at 25.6 V
        assertThat(need.runningPower().watts()).isCloseTo(256, within(1e-9));
        assertThat(need.surgePower().watts()).isCloseTo(2560, within(1e-9));
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThatThrownBy(() -> BankNeedBuilder.builder()
                        .dailyEnergy(Energy.wattHours(-1))
                        .worstDailyEnergy(Energy.kilowattHours(200_000))
                        .nominalVoltage(Voltage.volts(36))
                        .lowest(Temperature.celsius(-80))
                        .runningPower(Power.watts(-1))
                        .surgePower(Power.watts(-1))
                        .cutOffVoltage(Voltage.volts(36))
                        .cableResistance(Resistance.ohms(2))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path())
                                .containsExactly(
                                        "/dailyEnergy",
                                        "/worstDailyEnergy",
                                        "/lowest",
                                        "/runningPower",
                                        "/surgePower",
                                        "/cableResistance",
                                        "/nominalVoltage",
                                        "/cutOffVoltage"))
                .hasMessageContaining("nominalVoltage must be 12 V, 24 V or 48 V, but was 36 V.")
                .hasMessageContaining("cutOffVoltage must be below nominalVoltage 36 V, but was 36 V.");
    }
}
