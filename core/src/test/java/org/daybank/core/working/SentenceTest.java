package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

class SentenceTest {
    private static final Sentence COLDEST =
            Sentence.of("%s passes %s by %s", Voltage.volts(142.345), Voltage.volts(137.2), Ratio.of(0.0375));

    @Test
    void figuresAreShownToThreeDigits() {
        assertThat(COLDEST).hasToString("142 V passes 137 V by 3.75 %");
    }

    @Test
    void otherValuesAreShownAsAPersonWouldWriteThem() {
        assertThat(Sentence.of(
                        "%s, %s, %s, %s: %s",
                        7,
                        Severity.NOTICE,
                        "text",
                        Money.of("9.90", "EUR"),
                        List.of(Severity.DANGER, Voltage.volts(24))))
                .hasToString("7, notice, text, 9.90 EUR: danger, 24 V");
    }

    @Test
    void itReadsLikeItsText() {
        assertThat(COLDEST.length()).isEqualTo(COLDEST.toString().length());
        assertThat(COLDEST.charAt(4)).isEqualTo('V');
        assertThat(COLDEST.subSequence(0, 5)).isEqualTo("142 V");
    }
}
