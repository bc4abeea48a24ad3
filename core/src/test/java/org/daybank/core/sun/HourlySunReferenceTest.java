package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.daybank.core.Reference;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.site.EpwReader;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.working.Table;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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
}
