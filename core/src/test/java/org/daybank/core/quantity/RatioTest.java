package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatioTest {

    @ParameterizedTest
    @CsvSource({
        "0.8, 0.8",
        "80 %, 0.8",
        "80%, 0.8",
        "57 %, 0.57",
        "1e-05, 0.00001",
        "−5 %, -0.05",
        ".5, 0.5",
        "130, 130",
        "110 %, 1.1"
    })
    void numbersAndPercentagesAreRead(String text, double fraction) {
        assertThat(Ratio.parse(text).fraction()).isEqualTo(fraction);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "%", "80 percent", "80 %%", "NaN", "1e400", "1e999999999", "8 0"})
    void whatIsNoRatioIsRefused(String text) {
        assertThatThrownBy(() -> Ratio.parse(text))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessage(
                        "'%s' is not a ratio: write a number or a percentage, as in '0.8' or '80 %%'".formatted(text));
    }

    @Test
    void aDecimalCommaIsToldApart() {
        assertThatThrownBy(() -> Ratio.parse("0,8")).hasMessageContaining("the decimal sign is a point, not a comma");
    }

    @Test
    void onlyFiniteNumbersAreRatios() {
        assertThatThrownBy(() -> Ratio.of(Double.NaN)).hasMessage("A ratio must be a finite number, but was NaN.");
        assertThat(Ratio.of(-0.0)).isEqualTo(Ratio.ZERO);
    }

    @Test
    void arithmetic() {
        assertThat(Ratio.percent(25).onePlus()).isEqualTo(1.25);
        assertThat(Ratio.of(0.25).complement()).isEqualTo(Ratio.of(0.75));
        assertThat(Ratio.of(0.5).times(Ratio.of(0.5))).isEqualTo(Ratio.of(0.25));
        assertThat(Ratio.of(0.07).percent()).isCloseTo(7, within(1e-14));
    }

    @Test
    void sentences() {
        assertThat(Ratio.of(0.12345).rounded()).isEqualTo("12.3 %");
        assertThat(Ratio.of(-0.0365).rounded()).isEqualTo("-3.65 %");
        assertThat(Ratio.of(0.95)).hasToString("0.95");
    }

    @Test
    void toSoManyDigits() {
        assertThat(Ratio.of(1.21834).significant(3)).isEqualTo("1.22");
        assertThat(Ratio.of(0.000456).significant(2)).isEqualTo("0.00046");
        assertThat(Ratio.of(0.2)).isLessThan(Ratio.of(0.3)).isGreaterThan(Ratio.of(0.1));
    }
}
