package org.daybank.core.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.QuantityFormatException;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScalarsTest {
    enum Controller {
        PWM,
        STEP_DOWN_MPPT,
        SHUNT_12_VOLT
    }

    @ParameterizedTest
    @CsvSource({"PWM, pwm", "STEP_DOWN_MPPT, stepDownMppt", "SHUNT_12_VOLT, shunt12Volt"})
    void namesAreInCamelCase(Controller constant, String name) {
        assertThat(Scalars.name(constant)).isEqualTo(name);
    }

    @ParameterizedTest
    @EnumSource
    void namesReadBack(Controller constant) {
        assertThat(Scalars.parse(Controller.class, Scalars.name(constant))).isEqualTo(constant);
    }

    @ParameterizedTest
    @EnumSource
    void namesDoNotDependOnTheLocale(Controller constant) {
        Locale before = Locale.getDefault();
        String name = Scalars.name(constant);
        try {
            // in Turkish the small letter of I has no dot
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(Scalars.name(constant)).isEqualTo(name);
            assertThat(Scalars.name(Severity.NOTICE)).isEqualTo("notice");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatHasAParserOrIsPlainIsReadable() {
        assertThat(List.of(
                        String.class,
                        double.class,
                        Double.class,
                        int.class,
                        Integer.class,
                        boolean.class,
                        Boolean.class,
                        Controller.class,
                        Power.class,
                        Ratio.class,
                        Latitude.class,
                        Money.class))
                .allMatch(Scalars::readable);
        assertThat(List.of(Object.class, List.class, long.class, Problem.class)).noneMatch(Scalars::readable);
        assertThatThrownBy(() -> Scalars.parse(Problem.class, "x")).hasMessage("Problem is not a scalar");
    }

    @Test
    void valuesAreReadByTheirType() {
        assertThat(Scalars.parse(String.class, " as is ")).isEqualTo(" as is ");
        assertThat(Scalars.parse(Power.class, "1.2 kW")).isEqualTo(Power.watts(1200));
        assertThat(Scalars.parse(Ratio.class, "80 %")).isEqualTo(Ratio.of(0.8));
        assertThat(Scalars.parse(double.class, "1e-05")).isEqualTo(0.00001);
        assertThat(Scalars.parse(Double.class, "−2.5")).isEqualTo(-2.5);
        assertThat(Scalars.parse(int.class, "12")).isEqualTo(12);
        assertThat(Scalars.parse(Integer.class, "2147483647")).isEqualTo(Integer.MAX_VALUE);
        assertThat(Scalars.parse(boolean.class, "True")).isEqualTo(true);
        assertThat(Scalars.parse(Boolean.class, "FALSE")).isEqualTo(false);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "80 %", "1,5", "1e999999999", "NaN"})
    void whatIsNoNumberIsRefused(String text) {
        assertThatThrownBy(() -> Scalars.parse(double.class, text))
                .hasMessage("'%s' is not a number: write digits with a point as the decimal sign, as in '12.5'"
                        .formatted(text));
        assertThatThrownBy(() -> Scalars.parse(int.class, text)).hasMessageContaining("is not a number");
    }

    @Test
    void refusalsSayWhatWouldDo() {
        assertThatThrownBy(() -> Scalars.parse(int.class, "2.5"))
                .hasMessage("'2.5' is not a whole number up to 2147483647");
        assertThatThrownBy(() -> Scalars.parse(int.class, "2147483648")).hasMessageContaining("not a whole number");
        assertThatThrownBy(() -> Scalars.parse(boolean.class, "yes")).hasMessage("'yes' is neither true nor false");
        assertThatThrownBy(() -> Scalars.parse(Controller.class, "PWM"))
                .hasMessage("'PWM' is not one of pwm, stepDownMppt, shunt12Volt");
        assertThatThrownBy(() -> Scalars.parse(Power.class, "5")).isInstanceOf(QuantityFormatException.class);
    }

    @Test
    void longTextIsNotEchoed() {
        String text = "x".repeat(10_000);
        for (Class<?> type : List.of(double.class, boolean.class, Controller.class, Power.class)) {
            assertThatThrownBy(() -> Scalars.parse(type, text))
                    .satisfies(refused -> assertThat(refused.getMessage())
                            .hasSizeLessThan(300)
                            .contains("x".repeat(40) + "…"));
        }
    }

    @Test
    void ofLongTextTheBeginningIsShown() {
        String forty = "x".repeat(40);

        assertThatThrownBy(() -> Scalars.parse(boolean.class, forty))
                .hasMessage("'%s' is neither true nor false".formatted(forty));
        assertThatThrownBy(() -> Scalars.parse(boolean.class, forty + "y"))
                .hasMessage("'%s…' is neither true nor false".formatted(forty));
    }
}
