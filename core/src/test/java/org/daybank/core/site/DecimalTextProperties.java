package org.daybank.core.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class DecimalTextProperties {
    @Property
    void readsWhatTheLanguageReads(@ForAll @Scale(4) BigDecimal number) {
        String text = " " + number.toPlainString() + " ";

        assertThat(DecimalText.read("x" + text + "x", 1, text.length() + 1)).isEqualTo(number.doubleValue());
    }

    @Property
    void readsExponents(@ForAll double number) {
        String text = Double.toString(number);

        assertThat(DecimalText.read(text, 0, text.length())).isEqualTo(number);
    }

    @Test
    void whatIsNoNumberIsNone() {
        for (String text : new String[] {"", " ", ".", "-", "1,5", "NaN", "0x1p3", "1d", "1e", "--1", "1.2.3"}) {
            assertThat(DecimalText.read(text, 0, text.length())).as(text).isNaN();
        }
        assertThat(DecimalText.read("12.", 0, 3)).isEqualTo(12);
        assertThat(DecimalText.read("+.5\r", 0, 4)).isEqualTo(0.5);
    }
}
