package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureTest {

    /** Fixed points that both scales meet in whole or short decimal numbers: F = 9/5 C + 32. */
    @ParameterizedTest
    @CsvSource({
        "-40 [degF], -40",
        "32 °F, 0",
        "212 degF, 100",
        "98.6 F, 37",
        "14 °F, -10",
        "-459.67 [degF], -273.15",
        "0.5 °F, -17.5",
        "0 K, -273.15",
        "273.15 K, 0",
        "298.15 K, 25",
        "300 K, 26.85",
        "373.15 K, 100",
        "25 Cel, 25",
        "25 °C, 25",
        "25 C, 25",
        "25 degC, 25",
        "25 ℃, 25"
    })
    void scalesMeetExactly(String text, double celsius) {
        assertThat(Temperature.parse(text)).isEqualTo(Temperature.celsius(celsius));
    }

    @Test
    void belowAbsoluteZeroIsRefusedOnEveryScale() {
        assertThatThrownBy(() -> Temperature.parse("-0.01 K")).hasMessageContaining("at least -273.15 °C");
        assertThatThrownBy(() -> Temperature.parse("-460 °F")).hasMessageContaining("at least -273.15 °C");
        assertThatThrownBy(() -> Temperature.celsius(-273.16)).hasMessageContaining("at least -273.15 °C");
    }

    @Test
    void aDifferenceHasNoZeroPoint() {
        // 25 °C is a point 298.15 K above absolute zero; a difference of 25 °C is one of 25 K
        assertThat(Temperature.parse("25 °C").kelvins()).isEqualTo(298.15);
        assertThat(TemperatureDifference.parse("25 °C")).isEqualTo(TemperatureDifference.kelvins(25));
        assertThat(TemperatureDifference.parse("-300 K").kelvins()).isEqualTo(-300);
        assertThatThrownBy(() -> TemperatureDifference.parse("25 °F"))
                .hasMessageContaining("°F is a unit of temperature");
    }

    @Test
    void pointsAndDifferencesAddAsOneWouldExpect() {
        Temperature air = Temperature.celsius(-12);
        assertThat(air.plus(TemperatureDifference.kelvins(30))).isEqualTo(Temperature.celsius(18));
        assertThat(air.minus(TemperatureDifference.kelvins(8))).isEqualTo(Temperature.celsius(-20));
        assertThat(air.minus(Temperature.celsius(3))).isEqualTo(TemperatureDifference.kelvins(-15));
        assertThat(air).isLessThan(Temperature.parse("262 K"));
    }

    @Test
    void numbersOnTheOtherScales() {
        assertThat(Temperature.celsius(100).in(TemperatureUnit.FAHRENHEIT)).isEqualTo(212);
        assertThat(Temperature.celsius(0).in(TemperatureUnit.KELVIN)).isEqualTo(273.15);
        assertThat(Temperature.kelvins(273.15)).isEqualTo(Temperature.celsius(0));
    }
}
