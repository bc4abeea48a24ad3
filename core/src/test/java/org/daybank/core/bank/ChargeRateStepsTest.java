package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class ChargeRateStepsTest {
    private static final ChargeRateSteps STEPS = ChargeRateSteps.parse("15 Cel: 0.5; 0 Cel: 10 %; 5 Cel: 0.3");

    @Test
    void theWarmestStepBegunHolds() {
        assertThat(STEPS.at(Temperature.celsius(4.99))).isEqualTo(Ratio.of(0.1));
        assertThat(STEPS.at(Temperature.celsius(5))).isEqualTo(Ratio.of(0.3));
        assertThat(STEPS.at(Temperature.celsius(60))).isEqualTo(Ratio.of(0.5));
        assertThat(STEPS.at(Temperature.celsius(-20))).isEqualTo(Ratio.of(0.1));
    }

    @Test
    void isReadAsItIsWritten() {
        assertThat(STEPS).hasToString("0 °C: 0.1; 5 °C: 0.3; 15 °C: 0.5");
        assertThat(ChargeRateSteps.parse(STEPS.toString())).isEqualTo(STEPS);
    }

    @Test
    void refusesWhatIsNone() {
        assertThatThrownBy(() -> ChargeRateSteps.parse("0 Cel: 11; 5 Cel: -1; 5 Cel: 1"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("rate must be from 0 to 10, but was 11.");
        assertThatThrownBy(() -> ChargeRateSteps.parse("0 Cel: -1"))
                .hasMessage("rate must be from 0 to 10, but was -1.");
        assertThatThrownBy(() -> ChargeRateSteps.parse("0 Cel: 0.5; 5 Cel: 0.5; 5 Cel: 1"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("steps must each begin at a temperature of their own.");
        assertThatThrownBy(() -> new ChargeRateSteps(Collections.singletonList(null)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("steps/0 is required.");
        assertThatThrownBy(() -> ChargeRateSteps.parse("0 Cel")).isInstanceOf(IllegalArgumentException.class);
    }
}
