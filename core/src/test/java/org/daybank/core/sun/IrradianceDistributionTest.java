package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.Reference;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.EpwReader;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.WeatherYear;
import org.junit.jupiter.api.Test;

class IrradianceDistributionTest {
    private static final SunPolicy POLICY = SunPolicy.standard();

    @Test
    void whatLiesAboveAnIrradianceShrinksAsItGrows() {
        IrradianceDistribution year = IrradianceDistribution.of(
                Sites.withClearness(40, 0.5), new Plane(Angle.degrees(40), Angle.degrees(180)), POLICY);
        Ratio before = year.shareAbove(Irradiance.ZERO);

        assertThat(before.fraction()).isCloseTo(1, within(1e-12));
        for (int watts = 50; watts <= 1500; watts += 50) {
            Ratio share = year.shareAbove(Irradiance.wattsPerSquareMetre(watts));
            assertThat(share).isLessThanOrEqualTo(before);
            before = share;
        }
        assertThat(before).isEqualTo(Ratio.ZERO);
    }

    @Test
    void aSunlessYearHasNothingAboveAnything() {
        IrradianceDistribution dark =
                IrradianceDistribution.of(Sites.withClearness(40, 0), new Plane(Angle.ZERO, Angle.ZERO), POLICY);

        assertThat(dark.shareAbove(Irradiance.wattsPerSquareMetre(10))).isEqualTo(Ratio.ZERO);
    }

    /**
     * Against every hour of a typical year. The mean day knows no broken clouds and no hour clearer than its day, so the
     * shares are held to four hundredths of the year's irradiation.
     */
    @Test
    void sharesOfATypicalYear() {
        WeatherYear weather = EpwReader.read(Reference.text("weather/golden-tmy3.epw"));
        Plane plane = new Plane(Angle.degrees(40), Angle.degrees(180));
        HourlySeries hours = HourlySky.of(weather, POLICY)
                .on(ExposureBuilder.builder().plane(plane).build())
                .planeOfArray();
        IrradianceDistribution year = IrradianceDistribution.of(weather.site(), plane, POLICY);

        for (int limit = 200; limit <= 1000; limit += 200) {
            double above = 0;
            for (int hour = 0; hour < hours.size(); hour++) {
                above += Math.max(0, hours.at(hour) - limit);
            }
            assertThat(year.shareAbove(Irradiance.wattsPerSquareMetre(limit)).fraction())
                    .as("above %d W/m²", limit)
                    .isCloseTo(above / hours.sum(0, hours.size()), within(0.04));
        }
    }
}
