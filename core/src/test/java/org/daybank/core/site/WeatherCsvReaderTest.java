package org.daybank.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.Objects;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.junit.jupiter.api.Test;

class WeatherCsvReaderTest {
    private static final Place PLACE =
            new Place(Latitude.degrees(-12.5), Longitude.degrees(131), UtcOffset.parse("+09:30"), null);
    private static final String HEADER = "\uFEFF# invented\r\nglobal_kW/m2,air_[degF],wind_km/h\r\n";

    private static String year(int hours) {
        return HEADER + String.join("\n", Collections.nCopies(hours, "0.25, 50 ,36"));
    }

    private static void assertRefused(String text, String... messages) {
        assertThatThrownBy(() -> WeatherCsvReader.read(text, PLACE, 2001))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::message)
                                .containsExactly(messages));
    }

    @Test
    void columnsCarryTheirUnits() {
        WeatherYear weather = WeatherCsvReader.read(year(8760), PLACE, 2001);

        assertThat(Objects.requireNonNull(weather.global()).at(100)).isEqualTo(250);
        // (50 − 32) · 5 / 9 = 10 °C; 36 km/h = 10 m/s
        assertThat(Objects.requireNonNull(weather.air()).at(100)).isCloseTo(10, within(1e-12));
        assertThat(Objects.requireNonNull(weather.wind()).at(100)).isCloseTo(10, within(1e-12));
        assertThat(weather.direct()).isNull();
        assertThat(weather.place()).isEqualTo(PLACE);
    }

    @Test
    void aLeapYearHas8784Hours() {
        assertThat(WeatherCsvReader.read(year(8784), PLACE, 2024).hours()).isEqualTo(8784);
        assertThatThrownBy(() -> WeatherCsvReader.read(year(8784), PLACE, 2023))
                .hasMessageContaining("2023 is no leap year but has 8784 hours");
    }

    @Test
    void aYearThatLacksAnHourIsRefused() {
        assertRefused(year(8759), "a year has 8760 or 8784 hours but the text has 8759, up to line 8761");
    }

    @Test
    void commaDecimalsAreRefused() {
        assertRefused(
                year(8759) + "\n0,25,50,36",
                "line 8762: 4 cells where the header names 3 columns; decimals are written with a point, not a comma",
                "a year has 8760 or 8784 hours but the text has 8759, up to line 8762");
        assertRefused(
                "global_W/m2;air_Cel\n0,25;10",
                "line 1: the columns are parted by semicolons or tabs: part them by commas and write decimals with a point");
    }

    @Test
    void everyHourThatIsNoneIsNamed() {
        String text = HEADER + ",50,36\n-0.1,9999,36\nNaN,50,-1\n" + "0.25,50,36\n".repeat(8757);

        assertRefused(
                text,
                "line 3: global is missing or not a number.",
                "line 4: global must be from 0 to 1500 W/m², but was -100.",
                "line 4: air is 9999, which marks a missing value.",
                "line 5: global is missing or not a number.",
                // −1 km/h
                "line 5: wind must be from 0 to 110 m/s, but was -0.2777777777777778.");
    }

    @Test
    void unknownColumnsAndUnitsAreNamed() {
        assertRefused(
                "globl_W/m2,direct,air_Cel,air_K,wind_W/m2\n",
                "line 1: 'globl_W/m2' is no column of weather: write global, direct, diffuse, air, wind, each with its unit, as in 'global_W/m2'",
                "line 1: 'direct' has no known unit: write one of direct_W/m2, direct_kW/m2",
                "line 1: column air is there twice",
                "line 1: 'wind_W/m2' has no known unit: write one of wind_m/s, wind_km/h");
        assertRefused("", "the text has no line that names the columns, as in 'global_W/m2,air_Cel'");
    }
}
