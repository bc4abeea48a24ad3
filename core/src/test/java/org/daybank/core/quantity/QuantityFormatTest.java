package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityFormatTest {
    static final List<Dimension> DIMENSIONS = Dimension.ALL;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1200 W",
                "1200W",
                "+1200 W",
                " 1200  W ",
                "1.2e3 W",
                "1.2E+3 W",
                "1200. W",
                "1.2 kW",
                "0.0012 MW",
                "1200 watts",
                "1200\u00a0W",
                "1200\u202fW",
                "01200.000 W"
            })
    void waysToWriteOnePower(String text) {
        assertThat(Power.parse(text)).isEqualTo(Power.watts(1200));
    }

    @Test
    void typographicMinusAndBareFractionAreRead() {
        assertThat(Voltage.parse("−.5 V")).isEqualTo(Voltage.volts(-0.5));
        assertThat(TemperatureCoefficient.parse("−0.28 %/°C")).isEqualTo(TemperatureCoefficient.parse("-0.0028 1/K"));
    }

    @Test
    void zeroPointSevenKilowattsAreSevenHundredWatts() {
        // in binary, 0.7 · 1000 and 0.57 · 100 do not always round to the whole
        assertThat(Power.parse("0.7 kW")).isEqualTo(Power.parse("700 W"));
        assertThat(Power.parse("1.001 kW")).isEqualTo(Power.parse("1001 W"));
        assertThat(Length.parse("4.35 m")).isEqualTo(Length.parse("435 cm"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2.4 | the unit is missing",
                "2.4 Wh | Wh is a unit of energy",
                "2.4 kW.h/m2 | kW.h/m2 is a unit of irradiation",
                "2.4 VA | VA is a unit of apparent power",
                "2.4 furlongs | unknown unit 'furlongs'",
                "2.4 w | unknown unit 'w'",
                "2,4 W | the decimal sign is a point, not a comma",
                "W | expected a number and a unit",
                "'' | expected a number and a unit",
                "NaN W | expected a number and a unit",
                "Infinity W | expected a number and a unit",
                "0x10 W | unknown unit 'x10 W'",
                "1e999999999 W | the exponent has more than 3 digits",
                "1e-999999999 W | the exponent has more than 3 digits",
                "1e400 W | the number is too large",
                "2e305 MW | the number is too large",
                "1.2.3 W | unknown unit '.3 W'",
                "12 W extra | unknown unit 'W extra'",
            })
    void whatIsNoPowerIsRefusedWithTheReason(String text, String reason) {
        assertThatThrownBy(() -> Power.parse(text))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessage("'%s' is not a power: %s; write it with one of the units W, mW, kW, MW, as in '12.5 W'"
                        .formatted(text, reason));
    }

    @Test
    void anAbsurdlyLongNumberIsRefusedShortly() {
        String text = "1".repeat(100_000) + " W";
        assertThatThrownBy(() -> Power.parse(text)).isInstanceOfSatisfying(QuantityFormatException.class, refused -> {
            assertThat(refused).hasMessageContaining("more than 60 characters");
            assertThat(refused.getMessage()).hasSizeLessThan(250);
            assertThat(refused.text()).hasSize(41).endsWith("…");
        });
        // sixty characters are read
        assertThat(Power.parse("0." + "0".repeat(57) + "1 W").watts()).isEqualTo(1e-58);
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void everyDimensionNamesTheOtherOneWhenTheUnitIsItsOwn(Dimension dimension) {
        boolean power = dimension.baseUnit() == PowerUnit.WATT;
        String wrong = power ? "1 V" : "1 W";
        String owner = power ? "V is a unit of voltage" : "W is a unit of power";

        assertThatThrownBy(() -> dimension.parse().apply(wrong))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageContaining(owner)
                .hasMessageContaining("one of the units " + dimension.baseUnit().code());
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void everyDimensionAsksForItsUnit(Dimension dimension) {
        assertThatThrownBy(() -> dimension.parse().apply("5")).hasMessageContaining("the unit is missing");
        assertThatThrownBy(() ->
                        dimension.parse().apply("5,5 " + dimension.baseUnit().code()))
                .hasMessageContaining("a point, not a comma");
        assertThatThrownBy(() -> dimension
                        .parse()
                        .apply("1e999999999" + dimension.baseUnit().code()))
                .hasMessageContaining("exponent");
    }

    @ParameterizedTest
    @CsvSource({"energy, an energy", "angle, an angle", "power, a power"})
    void messagesTakeTheRightArticle(String noun, String phrase) {
        Dimension dimension = Dimension.ALL.stream()
                .filter(each -> each.toString().equalsIgnoreCase(noun + "unit"))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> dimension.parse().apply("?")).hasMessageContaining("is not " + phrase + ":");
    }

    @Test
    void textOfFortyCharactersIsShownAsItIs() {
        String forty = "x".repeat(40);

        assertThat(QuantityFormatException.shown(forty)).isEqualTo(forty);
        assertThat(QuantityFormatException.shown(forty + "x")).isEqualTo(forty + "…");
    }

    @ParameterizedTest
    @CsvSource({
        // up to 21 digits before the point and six noughts behind it are written out
        "1e20, 100000000000000000000",
        "1e21, 1e21",
        "-2.5e21, -2.5e21",
        "1e-7, 0.0000001",
        "1e-8, 1e-8",
        "0.0, 0",
        "120.50, 120.5"
    })
    void anExponentIsWrittenWhereAPersonWouldWriteOne(BigDecimal decimal, String text) {
        assertThat(Decimals.plain(decimal)).isEqualTo(text);
    }
}
