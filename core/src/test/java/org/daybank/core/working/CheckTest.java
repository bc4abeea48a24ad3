package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.working.Message.value;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

class CheckTest {

    @Test
    void theMarginIsTheRoomAsAShareOfTheLimit() {
        // (150 V − 120 V) / 150 V = 0.2
        Check kept = Check.atMost(SampleRule.COLDEST_VOLTAGE, Voltage.volts(120), Voltage.volts(150));
        assertThat(kept)
                .isEqualTo(new Check(
                        SampleRule.COLDEST_VOLTAGE,
                        true,
                        Optional.of(Voltage.volts(120)),
                        Optional.of(Voltage.volts(150)),
                        Optional.of(Ratio.of(0.2)),
                        Message.of(
                                "check.sample.coldestVoltage.passed",
                                value("value", Voltage.volts(120)),
                                value("limit", Voltage.volts(150)))));

        // (150 V − 165 V) / 150 V = −0.1
        Check broken = Check.atMost(SampleRule.COLDEST_VOLTAGE, Voltage.volts(165), Voltage.volts(150));
        assertThat(broken.passed()).isFalse();
        assertThat(broken.margin()).hasValue(Ratio.of(-0.1));

        // (1200 W − 1000 W) / 1000 W = 0.2, and (900 W − 1000 W) / 1000 W = −0.1
        assertThat(Check.atLeast(SampleRule.COLDEST_VOLTAGE, Power.watts(1200), Power.watts(1000))
                        .margin())
                .hasValue(Ratio.of(0.2));
        assertThat(Check.atLeast(SampleRule.COLDEST_VOLTAGE, Power.watts(900), Power.watts(1000))
                        .margin())
                .hasValue(Ratio.of(-0.1));
    }

    @Test
    void theLimitItselfKeepsTheRule() {
        assertThat(Check.atMost(SampleRule.COLDEST_VOLTAGE, Voltage.volts(150), Voltage.volts(150))
                        .passed())
                .isTrue();
        assertThat(Check.atLeast(SampleRule.COLDEST_VOLTAGE, Voltage.volts(150), Voltage.volts(150))
                        .passed())
                .isTrue();
        assertThat(Check.atLeast(SampleRule.COLDEST_VOLTAGE, Voltage.volts(150), Voltage.volts(150))
                        .margin())
                .hasValue(Ratio.ZERO);
    }

    @Test
    void aShareOfNothingOrOfATemperatureHasNoMeaning() {
        assertThat(Check.atMost(SampleRule.COLDEST_VOLTAGE, Power.watts(5), Power.ZERO)
                        .margin())
                .isEmpty();
        assertThat(Check.atMost(SampleRule.COLDEST_VOLTAGE, Power.watts(5), Power.ZERO)
                        .passed())
                .isFalse();
        assertThat(Check.atLeast(SampleRule.COLDEST_VOLTAGE, Temperature.celsius(5), Temperature.celsius(10))
                        .margin())
                .isEmpty();
        assertThat(Check.atLeast(SampleRule.COLDEST_VOLTAGE, Temperature.celsius(5), Temperature.celsius(10))
                        .passed())
                .isFalse();
        assertThat(Check.that(SampleRule.WAVEFORM, true))
                .isEqualTo(new Check(
                        SampleRule.WAVEFORM,
                        true,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Message.of("check.sample.waveform.passed")));
    }

    @Test
    void theMarginOfAShareIsTheDifference() {
        // 5 % − 3 %
        Check kept = Check.shareAtMost(SampleRule.CLIPPING, Ratio.of(0.03), Ratio.of(0.05));
        assertThat(kept.passed()).isTrue();
        assertThat(kept.value()).isEmpty();
        assertThat(kept.margin().orElseThrow().fraction()).isCloseTo(0.02, within(1e-15));
        assertThat(kept.message().values())
                .containsExactly(value("value", Ratio.of(0.03)), value("limit", Ratio.of(0.05)));
        assertThat(Check.shareAtMost(SampleRule.CLIPPING, Ratio.of(0.05), Ratio.of(0.05))
                        .passed())
                .isTrue();
        Check broken = Check.shareAtMost(SampleRule.CLIPPING, Ratio.of(0.06), Ratio.of(0.05));
        assertThat(broken.passed()).isFalse();
        assertThat(broken.margin().orElseThrow().fraction()).isCloseTo(-0.01, within(1e-15));
    }

    @Test
    void aRejectionTellsTheBrokenRulesAlone() {
        Check kept = Check.that(SampleRule.WAVEFORM, true);
        Check broken = Check.that(SampleRule.COLDEST_VOLTAGE, false);

        assertThat(Rejection.of("W2000", List.of(kept, broken))).isEqualTo(new Rejection("W2000", List.of(broken)));
    }
}
