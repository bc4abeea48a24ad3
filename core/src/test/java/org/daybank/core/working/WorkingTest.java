package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

class WorkingTest {

    @Test
    void aStepPutsTheNumbersInToFourSignificantDigits() {
        Working working = Working.builder()
                .step(
                        "charge",
                        "Q = E · d / U",
                        "IEEE 1013",
                        Charge.ampereHours(281.2512),
                        "%s · %s / %s",
                        Energy.wattHours(2400),
                        3.0,
                        Voltage.volts(25.6))
                .build();

        assertThat(working.steps())
                .containsExactly(new Step("charge", "Q = E · d / U", "2.4 kWh · 3 / 25.6 V", "281.3 Ah", "IEEE 1013"));
    }

    @Test
    void everyKindOfValueIsShownAsAPersonWouldWriteIt() {
        Working working = Working.builder()
                .step(
                        "all",
                        "",
                        "",
                        Ratio.of(0.123456),
                        "%s, %s, %s, %s, %s",
                        1234.5678,
                        7,
                        Severity.DANGER,
                        "text",
                        Money.of("9.90", "EUR"))
                .build();

        // 1234.5678 to four digits is 1235; counts and money keep theirs
        assertThat(working.steps().get(0).substituted()).isEqualTo("1235, 7, danger, text, 9.90 EUR");
        assertThat(working.steps().get(0).result()).isEqualTo("0.1235");
    }

    @Test
    void workingsAreJoinedInOrderAndCannotBeChangedAfterwards() {
        Working first = Working.builder().step("one", "", "", 1, "").build();
        Working.Builder builder = Working.builder().all(first).step("two", "", "", 2, "");
        Working both = builder.build();
        builder.step("three", "", "", 3, "");

        assertThat(both.steps()).extracting(Step::name).containsExactly("one", "two");
        assertThatThrownBy(() -> both.steps().clear()).isInstanceOf(UnsupportedOperationException.class);
    }
}
