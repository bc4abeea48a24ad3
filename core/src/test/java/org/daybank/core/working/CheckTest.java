package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

class CheckTest {

    @Test
    void theMarginIsTheRoomAsAShareOfTheLimit() {
        // (150 V − 120 V) / 150 V = 0.2
        Check kept = Check.atMost("coldest", Voltage.volts(120), Voltage.volts(150), "stays under");
        assertThat(kept)
                .isEqualTo(new Check(
                        "coldest",
                        true,
                        Voltage.volts(120),
                        Voltage.volts(150),
                        Ratio.of(0.2),
                        Sentence.of("stays under")));

        // (150 V − 165 V) / 150 V = −0.1
        Check broken = Check.atMost("coldest", Voltage.volts(165), Voltage.volts(150), "passes it");
        assertThat(broken.passed()).isFalse();
        assertThat(broken.margin()).isEqualTo(Ratio.of(-0.1));

        // (1200 W − 1000 W) / 1000 W = 0.2, and (900 W − 1000 W) / 1000 W = −0.1
        assertThat(Check.atLeast("rating", Power.watts(1200), Power.watts(1000), "")
                        .margin())
                .isEqualTo(Ratio.of(0.2));
        assertThat(Check.atLeast("rating", Power.watts(900), Power.watts(1000), "")
                        .margin())
                .isEqualTo(Ratio.of(-0.1));
    }

    @Test
    void theLimitItselfKeepsTheRule() {
        assertThat(Check.atMost("a", Voltage.volts(150), Voltage.volts(150), "").passed())
                .isTrue();
        assertThat(Check.atLeast("a", Voltage.volts(150), Voltage.volts(150), "")
                        .passed())
                .isTrue();
        assertThat(Check.atLeast("a", Voltage.volts(150), Voltage.volts(150), "")
                        .margin())
                .isEqualTo(Ratio.ZERO);
    }

    @Test
    void aShareOfNothingOrOfATemperatureHasNoMeaning() {
        assertThat(Check.atMost("idle", Power.watts(5), Power.ZERO, "").margin())
                .isNull();
        assertThat(Check.atMost("idle", Power.watts(5), Power.ZERO, "").passed())
                .isFalse();
        assertThat(Check.atLeast("cold", Temperature.celsius(5), Temperature.celsius(10), "")
                        .margin())
                .isNull();
        assertThat(Check.atLeast("cold", Temperature.celsius(5), Temperature.celsius(10), "")
                        .passed())
                .isFalse();
        assertThat(Check.that("waveform", true, "is a sine"))
                .isEqualTo(new Check("waveform", true, null, null, null, Sentence.of("is a sine")));
    }

    @Test
    void theMarginOfAShareIsTheDifference() {
        // 5 % − 3 %
        Check kept = Check.shareAtMost("clipping", Ratio.of(0.03), Ratio.of(0.05), "loses %s", Ratio.of(0.03));
        assertThat(kept.passed()).isTrue();
        assertThat(kept.value()).isNull();
        assertThat(Objects.requireNonNull(kept.margin()).fraction()).isCloseTo(0.02, within(1e-15));
        assertThat(kept.message()).hasToString("loses 3 %");
        assertThat(Check.shareAtMost("clipping", Ratio.of(0.05), Ratio.of(0.05), "")
                        .passed())
                .isTrue();
        Check broken = Check.shareAtMost("clipping", Ratio.of(0.06), Ratio.of(0.05), "");
        assertThat(broken.passed()).isFalse();
        assertThat(Objects.requireNonNull(broken.margin()).fraction()).isCloseTo(-0.01, within(1e-15));
    }

    @Test
    void aRejectionTellsTheBrokenRulesAlone() {
        Check kept = Check.that("waveform", true, "is a sine");
        Check broken = Check.that("frequency", false, "has another frequency");

        assertThat(Rejection.of("W2000", List.of(kept, broken))).isEqualTo(new Rejection("W2000", List.of(broken)));
    }
}
