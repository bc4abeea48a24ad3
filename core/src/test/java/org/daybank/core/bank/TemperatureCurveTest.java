package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureCurveTest {
    /** Lead-acid: required-capacity multipliers with IEEE 1013; lithium iron phosphate: published shares. */
    @ParameterizedTest
    @CsvSource({
        "VENTED_LEAD_ACID, 27, 1",
        // 1 / 1.11, 1 / 1.30 and 1 / 1.59
        "AGM, 16, 0.900901",
        "GEL, 4, 0.769231",
        "VENTED_LEAD_ACID, -7, 0.628931",
        // half way between 1/1.59 at −7 and 1/1.40 at −1
        "AGM, -4, 0.671608",
        "LITHIUM_IRON_PHOSPHATE, 25, 1",
        // half way between 85 % at 0 and 95 % at 10, and between 65 % at −20 and 85 % at 0
        "LITHIUM_IRON_PHOSPHATE, 5, 0.9",
        "LITHIUM_IRON_PHOSPHATE, -10, 0.75",
        // never more than the warmest point
        "LITHIUM_IRON_PHOSPHATE, 45, 1",
        "VENTED_LEAD_ACID, 40, 1"
    })
    void publishedSharesAndStraightLinesBetweenThem(Chemistry chemistry, double celsius, double share) {
        assertThat(chemistry.traits().capacityByTemperature().at(Temperature.celsius(celsius)))
                .hasValueSatisfying(known -> assertThat(known.fraction()).isCloseTo(share, within(1e-6)));
    }

    @Test
    void belowTheColdestPointNothingIsKnown() {
        TemperatureCurve agm = Chemistry.AGM.traits().capacityByTemperature();

        assertThat(agm.coldest()).isEqualTo(Temperature.celsius(-7));
        assertThat(agm.at(Temperature.celsius(-7.01))).isEmpty();
    }

    @Test
    void thePointsMayComeInAnyOrder() {
        TemperatureCurve curve = TemperatureCurve.parse("25 Cel: 1; -20 Cel: 62 %; 0 Cel: 0.85");

        assertThat(curve.at(Temperature.celsius(-20))).contains(Ratio.of(0.62));
        assertThat(TemperatureCurve.parse(curve.toString())).isEqualTo(curve);
    }

    @Test
    void refusesWhatIsNoCurve() {
        assertThatThrownBy(() -> new TemperatureCurve(List.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("points must not be empty.");
        assertThatThrownBy(() -> TemperatureCurve.parse("0.8"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.8");
        assertThatThrownBy(() -> TemperatureCurve.parse("25 Cel")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TemperatureCurve.parse("-20 Cel: 0; 25 Cel: 2; 25 Cel: 1"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("share must be from 0.05 to 1.5, but was 0.");
        assertThatThrownBy(() -> TemperatureCurve.parse("25 Cel: 2"))
                .hasMessage("share must be from 0.05 to 1.5, but was 2.");
        assertThatThrownBy(() -> TemperatureCurve.parse("-20 Cel: 0.5; 25 Cel: 1.1; 25 Cel: 1"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("points must each stand at a temperature of their own.");
    }
}
