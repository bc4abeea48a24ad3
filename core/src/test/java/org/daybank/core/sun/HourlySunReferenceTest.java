package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.daybank.core.Reference;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.site.EpwReader;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.working.Table;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Two typical years on tilted planes, reckoned elsewhere with the same conventions: sun in the middle of the hour, albedo 0.2. */
class HourlySunReferenceTest {
    private static final Map<SkyModel, String> COLUMNS =
            Map.of(SkyModel.ISOTROPIC, "POA_iso", SkyModel.HAY_DAVIES, "POA_haydavies", SkyModel.PEREZ, "POA_perez");

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void everyMonthWithinOnePerCent(SkyModel model) {
        SunPolicy policy = SunPolicy.standard().withHourlySkyModel(model);
        Map<String, HourlySky> skies = Map.of(
                "golden", HourlySky.of(weather("golden"), policy), "atlanta", HourlySky.of(weather("atlanta"), policy));

        for (Table.Row row :
                Reference.table("weather/monthly-plane-of-array.csv").rows()) {
            HourlySky sky = skies.get(row.text("file").contains("Golden") ? "golden" : "atlanta");
            Plane plane =
                    Plane.facingEquator(sky.weather.place().latitude(), Angle.degrees(row.value(Double.class, "tilt")));
            List<Irradiation> months =
                    sky.on(ExposureBuilder.builder().plane(plane).build()).dailyByMonth();
            double expected = row.value(Double.class, COLUMNS.get(model));

            assertThat(months.get(row.value(Integer.class, "month") - 1).kilowattHoursPerSquareMetre())
                    .as("%s, month %s", plane, row.text("month"))
                    .isCloseTo(expected, within(0.01 * expected));
        }
    }

    private static WeatherYear weather(String name) {
        return EpwReader.read(Reference.text("weather/" + name + "-tmy3.epw"));
    }

    /**
     * Years made up from the monthly means of two typical years, on a slope of 45°, against the slope in the typical years
     * themselves with their measured beam. How much is beam, made-up weather only estimates (Erbs), and twenty years still
     * scatter: each month is held to 9 %, the year to 2 %.
     */
    @ParameterizedTest
    @ValueSource(strings = {"golden", "atlanta"})
    void madeUpWeatherOnASlope(String name) {
        WeatherYear typical = weather(name);
        Exposure slope = ExposureBuilder.builder()
                .plane(Plane.facingEquator(typical.place().latitude(), Angle.degrees(45)))
                .build();
        List<Irradiation> expected =
                HourlySky.of(typical, SunPolicy.standard()).on(slope).dailyByMonth();
        double[] made = new double[12];
        for (int number = 0; number < 20; number++) {
            WeatherYear year = SyntheticWeather.year(
                    typical.site(), 2024, number, SunPolicy.standard(), SyntheticPolicy.standard());
            List<Irradiation> months =
                    HourlySky.of(year, SunPolicy.standard()).on(slope).dailyByMonth();
            Arrays.setAll(made, i -> made[i] + months.get(i).kilowattHoursPerSquareMetre() / 20);
        }
        double expectedSum = 0;
        for (int i = 0; i < 12; i++) {
            double month = expected.get(i).kilowattHoursPerSquareMetre();
            assertThat(made[i]).as("month %d", i + 1).isCloseTo(month, within(0.09 * month));
            expectedSum += month;
        }
        assertThat(Arrays.stream(made).sum()).isCloseTo(expectedSum, within(0.02 * expectedSum));
    }

    /** The files carry extraterrestrial irradiation of their own, reckoned with the older solar constant of 1367 W/m². */
    @ParameterizedTest
    @ValueSource(strings = {"golden", "atlanta"})
    void extraterrestrialIrradiationByMonth(String name) {
        SunPolicy older = SunPolicy.standard().withSolarConstant(Irradiance.wattsPerSquareMetre(1367));
        HourlySky sky = HourlySky.of(weather(name), older);
        HourCalendar calendar = sky.weather.calendar();
        for (Table.Row row :
                Reference.table("weather/monthly-plane-of-array.csv").rows()) {
            if (row.text("file").toLowerCase(Locale.ROOT).contains(name)
                    && row.text("tilt").equals("0")) {
                Month month = Month.of(row.value(Integer.class, "month"));
                double expected = row.value(Double.class, "extH_file");
                double actual = 24
                        * sky.path().extraterrestrial().mean(calendar.firstHour(month), calendar.endHour(month))
                        / 1000;
                // theirs lifts the sun by refraction (0.5 % in December, 0.2 % in summer); ours takes the middle of the
                // hour for its mean (0.4 % low in December); a month of another year lies up to three quarters of a day
                // elsewhere in the season (0.6 % in February)
                assertThat(actual).as("%s", month).isCloseTo(expected, within(0.01 * expected));
            }
        }
    }
}
