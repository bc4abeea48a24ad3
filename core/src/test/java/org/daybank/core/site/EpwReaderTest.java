package org.daybank.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.daybank.core.Reference;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.working.Table;
import org.junit.jupiter.api.Test;

class EpwReaderTest {
    private static void assertRefused(String text, String... messages) {
        assertThatThrownBy(() -> EpwReader.read(text))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::message)
                                .containsExactly(messages));
    }

    @Test
    void readsAYear() {
        WeatherYear weather = EpwReader.read(EpwTexts.join(EpwTexts.lines(2001)));

        assertThat(weather.place().latitude()).isEqualTo(Latitude.degrees(46.87));
        assertThat(weather.place().utcOffset()).isEqualTo(UtcOffset.parse("+05:30"));
        assertThat(weather.place().elevation().metres()).isEqualTo(1340);
        assertThat(weather.year()).isEqualTo(2001);
        assertThat(weather.hours()).isEqualTo(8760);
        assertThat(Objects.requireNonNull(weather.direct()).at(8)).isEqualTo(400.5);
        assertThat(Objects.requireNonNull(weather.wind()).at(0)).isEqualTo(2.5);
        // 8 hours of 300 W/m², and the number of the month and a half in °C
        assertThat(weather.months().dailyIrradiation())
                .allSatisfy(day -> assertThat(day.wattHoursPerSquareMetre()).isCloseTo(2400, within(1e-9)));
        assertThat(weather.site().recordLow()).isEqualTo(Temperature.celsius(1.5));
        assertThat(weather.site().recordHigh()).isEqualTo(Temperature.celsius(12.5));
    }

    @Test
    void aByteOrderMarkDoesNoHarm() {
        assertThat(EpwReader.read("\uFEFF" + EpwTexts.join(EpwTexts.lines(2001))))
                .isEqualTo(EpwReader.read(EpwTexts.join(EpwTexts.lines(2001))));
    }

    @Test
    void aLeapYearHasItsDay() {
        WeatherYear weather = EpwReader.read(EpwTexts.join(EpwTexts.lines(2020)));

        assertThat(weather.hours()).isEqualTo(8784);
        assertThat(weather.calendar().endHour(Month.FEBRUARY)).isEqualTo(60 * 24);
    }

    @Test
    void aLeapYearMayLackItsDay() {
        List<String> lines = EpwTexts.lines(2020);
        lines.subList(8 + 59 * 24, 8 + 60 * 24).clear();
        WeatherYear weather = EpwReader.read(EpwTexts.join(lines));

        assertThat(weather.hours()).isEqualTo(8760);
        assertThat(weather.year()).isEqualTo(2020);
        assertThat(weather.calendar().date(59)).hasToString("2020-03-01");
    }

    @Test
    void aTruncatedTextIsNotAYear() {
        List<String> lines = EpwTexts.lines(2001).subList(0, 5000);
        String broken = lines.get(4999).substring(0, 30);

        assertRefused(
                EpwTexts.join(lines.subList(0, 4999)) + broken,
                "line 5000: the line breaks off: at least 22 cells with commas between are needed",
                "a year has 8760 or 8784 hours but the text has 4991, up to line 5000");
    }

    @Test
    void aMissingHourIsNamed() {
        List<String> lines = new ArrayList<>(EpwTexts.lines(2001));
        lines.remove(8 + 31 * 24 + 5);

        // 1 February, hour 6, was in line 8 + 744 + 6 = 758
        assertRefused(
                EpwTexts.join(lines),
                "line 758: expected month 2, day 1, hour 6 but found month 2, day 1, hour 7",
                "a year has 8760 or 8784 hours but the text has 8759, up to line 8767");
    }

    @Test
    void valuesMarkedMissingAreNotFilledIn() {
        assertRefused(
                EpwTexts.withLine(
                        20,
                        line -> line.replace(",300,400.5,120,", ",9999,9999,9999,")
                                .replace("1.5", "99.9")),
                "line 20: global is 9999, which marks a missing value.",
                "line 20: direct is 9999, which marks a missing value.",
                "line 20: diffuse is 9999, which marks a missing value.",
                "line 20: air is 99.9, which marks a missing value.");
    }

    @Test
    void impossibleValuesAreNamed() {
        assertRefused(
                EpwTexts.withLine(20, line -> line.replace(",300,400.5,120,", ",-4,1450,,")),
                "line 20: global must be from 0 to 1500 W/m², but was -4.",
                // 1361 W/m² · 1.01 · (1 + 0.033 · cos(360° · 1 / 365)) = 1420 W/m²
                "line 20: direct is 1450 W/m², more than the 1420 W/m² that the sun sends outside the air on that day.",
                "line 20: diffuse is missing or not a number.");
    }

    @Test
    void commaDecimalsShiftTheCellsAndAreRefused() {
        assertThatThrownBy(() -> EpwReader.read(EpwTexts.withLine(20, line -> line.replace("400.5", "4x00"))))
                .hasMessageContaining("line 20: direct is missing or not a number");
        assertThatThrownBy(() -> EpwReader.read(EpwTexts.join(EpwTexts.lines(2001).stream()
                        .map(line -> line.replace(',', ';').replace('.', ','))
                        .toList())))
                .hasMessageContaining("this is no EPW text: it must begin with a LOCATION line");
    }

    @Test
    void onlyTheFirstHundredProblemsAreListed() {
        String text = String.join("\n", EpwTexts.lines(2001)).replace(",400.5,", ",-1,");

        assertThatThrownBy(() -> EpwReader.read(text))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems()).hasSize(101))
                // 365 days of 8 hours, less the hundred that are listed
                .hasMessageContaining("2820 more problems are not listed.");
    }

    @Test
    void aPlaceThatCannotBeIsNamed() {
        assertRefused(
                EpwTexts.withLine(1, line -> line.replace("46.87", "96.87")),
                "line 1: A latitude must be from −90 to 90 degrees, but was 96.87.");
    }

    @Test
    void somethingElseIsNoWeather() {
        assertRefused(
                "",
                "this is no EPW text: it must begin with a LOCATION line (name, region, country, source, number, latitude, longitude, UTC offset, elevation) and have a DATA PERIODS line before the hours");
    }

    @Test
    void typicalYearsAgreeWithMeansFoundElsewhere() {
        for (Table.Row row :
                Reference.table("weather/monthly-plane-of-array.csv").rows()) {
            if (!row.text("tilt").equals("0")) {
                continue;
            }
            String name = row.text("file").contains("Golden") ? "golden" : "atlanta";
            MonthlyClimate months = EpwReader.read(Reference.text("weather/" + name + "-tmy3.epw"))
                    .months();
            int month = row.value(Integer.class, "month") - 1;
            // both printed to four decimals
            assertThat(Objects.requireNonNull(months.dailyIrradiation())
                            .get(month)
                            .kilowattHoursPerSquareMetre())
                    .isCloseTo(row.value(Double.class, "GHI"), within(1e-4));
            assertThat(months.meanAir().get(month).celsius()).isCloseTo(row.value(Double.class, "Tmean"), within(1e-4));
        }
    }

    @Test
    void aYearPutTogetherFromSeveralIsTypical() {
        // the hours of February are those of another year: 2002 stands for both
        List<String> mixed = EpwTexts.lines(1995);
        for (int line = 8 + 31 * 24; line < 8 + 59 * 24; line++) {
            mixed.set(line, mixed.get(line).replaceFirst("^1995", "1987"));
        }
        assertThat(EpwReader.read(EpwTexts.join(mixed)).year()).isEqualTo(2002);
        assertThat(EpwReader.read(EpwTexts.join(EpwTexts.lines(1995))).year()).isEqualTo(1995);
        // with a leap day it is 2000
        List<String> leap = EpwTexts.lines(1996);
        for (int line = 8; line < 8 + 31 * 24; line++) {
            leap.set(line, leap.get(line).replaceFirst("^1996", "1988"));
        }
        assertThat(EpwReader.read(EpwTexts.join(leap)).year()).isEqualTo(2000);
        assertThat(EpwReader.read(EpwTexts.join(EpwTexts.lines(1996))).year()).isEqualTo(1996);
        // the first and the last year that the sun is reckoned for
        assertThat(EpwReader.read(EpwTexts.join(EpwTexts.lines(1950))).year()).isEqualTo(1950);
        assertThat(EpwReader.read(EpwTexts.join(EpwTexts.lines(2050))).year()).isEqualTo(2050);
        assertThat(EpwReader.read(EpwTexts.join(EpwTexts.lines(1949))).year()).isEqualTo(2002);
        assertThat(EpwReader.read(EpwTexts.join(EpwTexts.lines(2051))).year()).isEqualTo(2002);
    }
}
