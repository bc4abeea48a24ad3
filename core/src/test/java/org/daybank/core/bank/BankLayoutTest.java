package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BankLayoutTest {
    private static final Offset<Double> ROUNDING = within(1e-9);

    @Test
    void lithiumTwoInSeriesThreeInParallel() {
        BankLayout bank = BankLayout.of(Batteries.LITHIUM_12V, Voltage.volts(24), 2, 3);

        assertThat(bank.count()).isEqualTo(6);
        // 8 cells · 3.2 V; 3 · 100 Ah; 300 Ah · 25.6 V = 7680 Wh
        assertThat(bank.trueNominal().volts()).isCloseTo(25.6, ROUNDING);
        assertThat(bank.ratedCapacity().ampereHours()).isCloseTo(300, ROUNDING);
        assertThat(bank.ratedEnergy().wattHours()).isCloseTo(7680, ROUNDING);
        // 12 mΩ · 2 / 3 = 8 mΩ; full, 8 · 3.4 V = 27.2 V; / 8 mΩ = 3400 A
        assertThat(bank.resistance().milliohms()).isCloseTo(8, ROUNDING);
        assertThat(bank.shortCircuitCurrent().amperes()).isCloseTo(3400, within(1e-6));
        assertThat(bank.minimumChargeCurrent().amperes()).isZero();
        assertThat(bank.maximumChargeCurrent().amperes()).isCloseTo(150, ROUNDING);
        assertThat(bank.maximumDischargeCurrent().amperes()).isCloseTo(300, ROUNDING);
        assertThat(bank.peakDischargeCurrent().amperes()).isCloseTo(600, ROUNDING);
        // 8 · 2.9 V
        assertThat(bank.disconnectVoltage().volts()).isCloseTo(23.2, ROUNDING);
        assertThat(bank.mass().kilograms()).isCloseTo(66, ROUNDING);
        assertThat(bank.price()).isEqualTo(Money.of("1914", "EUR"));
    }

    @Test
    void stringsNeverShareEvenly() {
        // 1 + 0.9 · (3 − 1) = 2.8 strings: 50 A, 100 A and 200 A of each
        BankLayout bank = BankLayout.of(Batteries.LITHIUM_12V, Voltage.volts(24), 2, 3, Ratio.of(0.9));

        assertThat(bank.evenStrings()).isCloseTo(2.8, ROUNDING);
        assertThat(bank.maximumChargeCurrent().amperes()).isCloseTo(140, ROUNDING);
        assertThat(bank.maximumDischargeCurrent().amperes()).isCloseTo(280, ROUNDING);
        assertThat(bank.peakDischargeCurrent().amperes()).isCloseTo(560, ROUNDING);
        assertThat(bank.ratedCapacity().ampereHours()).isCloseTo(300, ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({
        // 100 Ah, 50 A at most: nothing, 0.1 C, 0.3 C, and 0.5 C which is the 50 A; three strings
        "-1, 0",
        "0, 30",
        "4.9, 30",
        "5, 90",
        "15, 150",
        "40, 150"
    })
    void coolLithiumIsChargedGently(double celsius, double amperes) {
        BankLayout bank = BankLayout.of(Batteries.LITHIUM_12V, Voltage.volts(24), 2, 3);

        assertThat(bank.maximumChargeCurrentAt(Temperature.celsius(celsius)).amperes())
                .isCloseTo(amperes, ROUNDING);
    }

    @Test
    void aSheetMaySayOtherwise() {
        // 0.05 C from −20 °C, then up to the 50 A: 5 A and 50 A
        Battery hardy = Batteries.LITHIUM_12V
                .withColdestCharge(Temperature.celsius(-20))
                .withChargeRateByTemperature(ChargeRateSteps.parse("-20 Cel: 0.05; 0 Cel: 1"));
        BankLayout bank = BankLayout.of(hardy, Voltage.volts(12), 1, 1);

        assertThat(bank.maximumChargeCurrentAt(Temperature.celsius(-10)).amperes())
                .isCloseTo(5, ROUNDING);
        assertThat(bank.maximumChargeCurrentAt(Temperature.celsius(1)).amperes())
                .isCloseTo(50, ROUNDING);
    }

    @Test
    void leadAcidFourInSeriesTwoInParallel() {
        BankLayout bank = BankLayout.of(Batteries.VENTED_6V, Voltage.volts(24), 4, 2);

        // 12 cells · 2 V; 2 · 250 Ah at the slowest; 12 kWh
        assertThat(bank.trueNominal().volts()).isCloseTo(24, ROUNDING);
        assertThat(bank.ratedEnergy().wattHours()).isCloseTo(12_000, ROUNDING);
        // 2.1 mΩ · 4 / 2 = 4.2 mΩ; full, 12 · 2.12 V = 25.44 V; / 4.2 mΩ = 6057.14 A
        assertThat(bank.shortCircuitCurrent().amperes()).isCloseTo(6057.14, within(0.01));
        // C/10 of 500 Ah; 2 · 30 A; 12 · 1.9 V
        assertThat(bank.minimumChargeCurrent().amperes()).isCloseTo(50, ROUNDING);
        assertThat(bank.maximumChargeCurrent().amperes()).isCloseTo(60, ROUNDING);
        assertThat(bank.disconnectVoltage().volts()).isCloseTo(22.8, ROUNDING);
    }

    @Test
    void eachStringCarriesItsShareOfTheCurrent() {
        BankLayout bank = BankLayout.of(Batteries.VENTED_6V, Voltage.volts(24), 4, 2);

        // 22.5 A are 11.25 A a string, the twenty-hour rate: 2 · 225 Ah
        assertThat(bank.capacityAt(Current.amperes(22.5)).ampereHours()).isCloseTo(450, ROUNDING);
        // 148 A are 74 A a string, twice the five-hour rate: 2 · 185 Ah · 0.5^0.25 = 311.132 Ah
        assertThat(bank.capacityAt(Current.amperes(148)).ampereHours()).isCloseTo(311.132, within(1e-3));
    }
}
