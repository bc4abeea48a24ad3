package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElectrolyteTest {
    /** Published: 1.27 → −65 °C, 1.20 → −27, 1.15 → −15, 1.10 → −7; the gravity falls from 1.27 full to 1.10 empty. */
    @ParameterizedTest
    @CsvSource({
        "0, -65",
        "1, -7",
        // deeper than empty there is no thinner acid in the table
        "1.2, -7",
        // 1.27 − 0.17 · 7/17 = 1.20 and 1.27 − 0.17 · 12/17 = 1.15
        "0.4117647059, -27",
        "0.7058823529, -15",
        // a hair shallower than a published point lies on the other line: 1.15 + 0.001: −15 − 12 · 0.001/0.05 = −15.24
        "0.7, -15.24",
        // 1.27 − 0.085 = 1.185: −15 − 12 · 0.035/0.05 = −23.4
        "0.5, -23.4",
        // 1.27 − 0.034 = 1.236: −27 − 38 · 0.036/0.07 = −46.543
        "0.2, -46.543",
        // 1.27 − 0.136 = 1.134: −7 − 8 · 0.034/0.05 = −12.44
        "0.8, -12.44"
    })
    void acidFreezesTheSoonerTheDeeperTheDischarge(double depth, double celsius) {
        assertThat(Electrolyte.freezingPoint(Ratio.of(depth)).celsius()).isCloseTo(celsius, within(1e-3));
    }
}
