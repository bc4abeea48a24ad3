package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LatitudeLongitudeTest {

    @ParameterizedTest
    @CsvSource({"46.87, 46.87", "-12.5 deg, -12.5", "−12.5°, -12.5", "+90, 90", "-90, -90", "1e1, 10", "0, 0"})
    void latitudesAreRead(String text, double degrees) {
        assertThat(Latitude.parse(text)).isEqualTo(Latitude.degrees(degrees));
    }

    @Test
    void eachHasItsRange() {
        assertThatThrownBy(() -> Latitude.degrees(90.1))
                .hasMessage("A latitude must be from −90 to 90 degrees, but was 90.1.");
        assertThatThrownBy(() -> Latitude.parse("-91")).hasMessageContaining("from −90 to 90");
        assertThatThrownBy(() -> Longitude.degrees(-180.5))
                .hasMessageContaining("from −180 to 180 degrees, but was -180.5.");
        assertThatThrownBy(() -> Latitude.degrees(Double.NaN)).hasMessageContaining("NaN");
        assertThat(Longitude.degrees(180).degrees()).isEqualTo(180);
        assertThat(Longitude.degrees(-0.0)).isEqualTo(Longitude.degrees(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "north", "46.87 N", "46.87 m", "1e999999999", "46°52'"})
    void whatIsNoLatitudeIsRefused(String text) {
        assertThatThrownBy(() -> Latitude.parse(text))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessage("'%s' is not a latitude: write decimal degrees, as in '46.87'".formatted(text));
    }

    @Test
    void aDecimalCommaIsToldApart() {
        assertThatThrownBy(() -> Longitude.parse("8,55"))
                .hasMessage(
                        "'8,55' is not a longitude: the decimal sign is a point, not a comma; write decimal degrees, as in '46.87'");
    }

    @Test
    void radians() {
        assertThat(Latitude.degrees(90).radians()).isEqualTo(Math.PI / 2);
        assertThat(Longitude.degrees(-180).radians()).isEqualTo(-Math.PI);
        assertThat(Latitude.degrees(-1)).isLessThan(Latitude.degrees(1));
    }

    @Test
    void eastOfAnotherIsMore() {
        assertThat(Longitude.degrees(12)).isGreaterThan(Longitude.degrees(-71)).isLessThan(Longitude.degrees(13));
    }
}
