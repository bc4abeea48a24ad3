package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.site.UtcOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No locale of the machine gets into what is read or printed: decimal commas, dotless i, other digits. */
class LocaleTest {
    private Locale before;

    @BeforeEach
    void rememberLocale() {
        before = Locale.getDefault();
    }

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-US", "de-DE", "fr-CH", "tr-TR", "ar-EG", "ne-NP", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    void textIsTheSameEverywhere(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));

        assertThat(TimeWindow.parse("08:05-23:00")).hasToString("08:05-23:00");
        assertThat(UtcOffset.parse("-3.5")).hasToString("-03:30");
        assertThat(Power.parse("1234.5 W")).hasToString("1.2345 kW");
        assertThat(Power.watts(1234.567).rounded()).isEqualTo("1.235 kW");
        assertThat(Ratio.parse("12.5 %")).hasToString("0.125");
        assertThat(Money.parse("1234.5 inr")).hasToString("1234.50 INR");
        assertThat(Latitude.degrees(-12.5)).hasToString("-12.5°");
        assertThatThrownBy(() -> Money.of("1.005", "EUR")).hasMessageContaining("at most 2 decimals");
        assertThatThrownBy(() -> Temperature.celsius(-300))
                .hasMessageContaining("at least -273.15 °C, but was -300 °C.");
        assertThatThrownBy(() -> Latitude.degrees(95)).hasMessageContaining("but was 95.0");
    }
}
