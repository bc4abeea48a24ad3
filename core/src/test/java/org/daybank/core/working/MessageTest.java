package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.daybank.core.working.Message.value;

import java.util.List;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

class MessageTest {
    private static final MessageTemplates TEMPLATES = MessageTemplates.parse(
            "# a comment\n\ncoldest = {voltage} exceeds {limit} by {share}.\nvalues = {a}, {b}, {c}, {d}: {e}\n");

    private static final Message COLDEST = Message.of(
            "coldest",
            value("share", Ratio.of(0.0375)),
            value("voltage", Voltage.volts(142.345)),
            value("limit", Voltage.volts(137.2)));

    @Test
    void figuresAreShownToThreeDigitsWhereTheTemplateNamesThem() {
        assertThat(TEMPLATES.format(COLDEST)).isEqualTo("142 V exceeds 137 V by 3.75 %.");
    }

    @Test
    void otherValuesAreShownAsAPersonWouldWriteThem() {
        Message message = Message.of(
                "values",
                value("a", 7),
                value("b", Severity.NOTICE),
                value("c", "text"),
                value("d", Money.of("9.90", "EUR")),
                value("e", List.of(Severity.DANGER, Voltage.volts(24))));
        assertThat(TEMPLATES.format(message)).isEqualTo("7, notice, text, 9.90 EUR: danger, 24 V");
    }

    @Test
    void aMissingTemplateAndAMissingValueAreMistakes() {
        assertThatThrownBy(() -> TEMPLATES.format(Message.of("warmest")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("No message warmest");
        assertThatThrownBy(() -> TEMPLATES.format(Message.of("coldest", value("voltage", Voltage.volts(12)))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("The message coldest has no value for {limit}");
        assertThatThrownBy(() -> MessageTemplates.parse("a = b\na = c\n")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> MessageTemplates.parse("a = {b\n")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aMessageIsASequenceOfTheCharactersOfItsSentence() {
        Message message = Message.of("hazard.bankArc.text", value("trueNominal", Voltage.volts(51.2)));
        assertThat(message).hasToString(message.toString()).contains("51.2 V");
        assertThat(message.length()).isEqualTo(message.toString().length());
        assertThat(message.subSequence(0, 3)).isEqualTo(message.toString().substring(0, 3));
        assertThat(message.charAt(1)).isEqualTo(message.toString().charAt(1));
    }
}
