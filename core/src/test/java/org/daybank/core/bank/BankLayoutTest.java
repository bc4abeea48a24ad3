package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

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
