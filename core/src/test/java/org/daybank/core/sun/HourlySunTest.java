package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.site.Horizon;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.Place;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.site.WeatherYearBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HourlySunTest {
    private static final SunPolicy POLICY = SunPolicy.standard();
    private static final Place RIDGE =
            new Place(Latitude.degrees(46.87), Longitude.degrees(-113.5), UtcOffset.hours(-7), null);
    private static final Plane FLAT = new Plane(Angle.ZERO, Angle.ZERO);
    private static final Plane SLOPE = new Plane(Angle.degrees(50), Angle.degrees(170));

    /** Global irradiance of a given clearness in every hour with sun. */
    private static WeatherYear withClearness(double clearness) {
        WeatherYear dark = WeatherYearBuilder.builder()
                .place(RIDGE)
                .year(2001)
                .global(HourlySeries.wattsPerSquareMetre(new double[8760]))
                .build();
        SunPath path = SunPath.of(RIDGE, dark.calendar(), POLICY);
        double[] global = new double[8760];
        Arrays.setAll(global, hour -> clearness * path.normalExtraterrestrial[hour / 24] * Math.max(0, path.up[hour]));
        return dark.withGlobal(HourlySeries.wattsPerSquareMetre(global));
    }

    private static HourlySun on(WeatherYear weather, Plane plane, SunPolicy policy) {
        return HourlySky.of(weather, policy)
                .on(ExposureBuilder.builder().plane(plane).build());
    }

    @Test
    void clearnessDecidesHowMuchIsDiffuse() {
        WeatherYear weather = withClearness(0.5);
        WeatherYear completed = HourlySky.of(weather, POLICY).completed();
        int noon = 172 * 24 + 12;

        // Erbs 1982: 0.9511 − 0.1604 · 0.5 + 4.388 · 0.25 − 16.638 · 0.125 + 12.336 · 0.0625 = 0.65915
        assertThat(Objects.requireNonNull(completed.diffuse()).at(noon)
                        / Objects.requireNonNull(weather.global()).at(noon))
                .isCloseTo(0.65915, within(1e-6));
    }

    @Test
    void anyTwoOfTheThreeSayTheSame() {
        WeatherYear all = HourlySky.of(withClearness(0.6), POLICY).completed();
        double expected = on(all, SLOPE, POLICY).yearly().kilowattHoursPerSquareMetre();

        assertThat(on(all.withGlobal(null), SLOPE, POLICY).yearly().kilowattHoursPerSquareMetre())
                .isCloseTo(expected, within(1e-9 * expected));
        assertThat(on(all.withDirect(null), SLOPE, POLICY).yearly().kilowattHoursPerSquareMetre())
                .isCloseTo(expected, within(1e-9 * expected));
        assertThat(on(all.withDiffuse(null), SLOPE, POLICY).yearly().kilowattHoursPerSquareMetre())
                .isCloseTo(expected, within(1e-9 * expected));
    }

    @ParameterizedTest
    @EnumSource(
            value = SkyModel.class,
            names = {"ISOTROPIC", "HAY_DAVIES"})
    void theHorizontalPlaneReturnsTheHorizontal(SkyModel model) {
        WeatherYear weather = withClearness(0.6);
        HourlySun flat = on(weather, FLAT, POLICY.withHourlySkyModel(model));

        // but for Hay and Davies with the sun lower than 1°, where the light around it is held back
        double[] global = Objects.requireNonNull(weather.global()).values();
        for (int hour = 0; hour < global.length; hour++) {
            assertThat(flat.planeOfArray().at(hour)).isCloseTo(global[hour], within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void partsAddUpAndGlassTakesSome(SkyModel model) {
        HourlySun sun = on(withClearness(0.55), SLOPE, POLICY.withHourlySkyModel(model));

        for (int hour = 0; hour < 8760; hour++) {
            double sum = sun.beam().at(hour)
                    + sun.skyDiffuse().at(hour)
                    + sun.ground().at(hour);
            assertThat(sun.planeOfArray().at(hour)).isCloseTo(sum, within(1e-9));
            assertThat(sun.effective().at(hour)).isBetween(0.0, sum + 1e-9);
        }
        // customary loss by incidence over a year: two to five per cent
        assertThat(sun.effective().sum(0, 8760) / sun.planeOfArray().sum(0, 8760))
                .isBetween(0.95, 0.98);
        assertThat(on(withClearness(0.55), SLOPE, POLICY.withCover(Cover.NONE)).effective())
                .isEqualTo(on(withClearness(0.55), SLOPE, POLICY.withCover(Cover.NONE))
                        .planeOfArray());
    }

    @Test
    void overcastSkyOnAWallIsHalfTheSkyAndHalfTheGround() {
        // isotropic: 0.5 + 0.5 · 0.6 with snow
        WeatherYear overcast = withClearness(0.4);
        WeatherYear allDiffuse = overcast.withDiffuse(overcast.global());
        HourlySun wall = HourlySky.of(allDiffuse, POLICY.withHourlySkyModel(SkyModel.ISOTROPIC))
                .on(ExposureBuilder.builder()
                        .plane(new Plane(Angle.degrees(90), Angle.degrees(30)))
                        .albedo(Collections.nCopies(12, Ratio.of(0.6)))
                        .build());

        assertThat(wall.yearly()
                        .dividedBy(on(allDiffuse, FLAT, POLICY.withHourlySkyModel(SkyModel.ISOTROPIC))
                                .yearly()))
                .isCloseTo(0.8, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 15, 30, 60})
    void aRidgeAllAroundTakesTheLowSkyAndTheLowSun(double elevation) {
        View ringed = View.of(FLAT, Horizon.parse("0 deg: %s deg".formatted(elevation)));

        // share of an even sky above h on the level: ∫ sin·cos over ∫ sin·cos = 1 − sin² h = cos² h
        double cosine = Math.cos(Math.toRadians(elevation));
        assertThat(ringed.skyShare()).isCloseTo(cosine * cosine, within(1e-4));
        double sine = Math.sin(Math.toRadians(elevation));
        assertThat(ringed.cosIncidence(sine - 1e-9, cosine, 0)).isZero();
        assertThat(ringed.cosIncidence(sine + 1e-9, -cosine, 0)).isPositive();
    }

    @Test
    void shadeComesFromTheSideWhereTheRidgeStands() {
        WeatherYear weather = withClearness(0.6);
        HourlySun shaded = HourlySky.of(weather, POLICY)
                .on(new Exposure(
                        SLOPE, Horizon.parse("45 deg: 25 deg; 135 deg: 25 deg; 140 deg: 0 deg; 40 deg: 0 deg"), null));
        HourlySun open = on(weather, SLOPE, POLICY);
        int day = 80 * 24;

        // at the equinox the sun stands 18° high in the east at 8, and as high in the west at 16 hours solar time
        assertThat(shaded.beam().at(day + 8)).isZero();
        assertThat(open.beam().at(day + 8)).isPositive();
        assertThat(shaded.beam().at(day + 16)).isEqualTo(open.beam().at(day + 16));
        assertThat(shaded.yearly()).isLessThan(open.yearly());
    }

    @Test
    void workingShowsTheSums() {
        HourlySun sun = on(withClearness(0.5), SLOPE, POLICY);

        assertThat(sun.working().steps().get(0).result()).isEqualTo(sun.yearly().rounded());
        assertThat(List.of("Perez and others 1990"))
                .contains(sun.working().steps().get(0).source());
    }

    @Test
    void theMeanDaysOfTheMonthsAddUpToTheYear() {
        HourlySun sun = on(withClearness(0.5), SLOPE, POLICY);
        List<Irradiation> days = sun.dailyByMonth();
        double sum = 0;
        for (Month month : Month.values()) {
            sum += days.get(month.getValue() - 1).kilowattHoursPerSquareMetre() * month.length(false);
        }

        assertThat(days).hasSize(12);
        double year = sun.yearly().kilowattHoursPerSquareMetre();
        assertThat(sum).isCloseTo(year, within(1e-9 * year));
    }

    @Test
    void whatIsNoExposureIsRefused() {
        assertThatThrownBy(() -> new Exposure(null, null, List.of(Ratio.of(0.2), Ratio.of(1.2))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "plane is required. albedo must have at least 12 elements, but has 2. albedo/1 must be from 0 to 1, but was 1.2.");
    }
}
