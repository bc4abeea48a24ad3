package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.site.Horizon;
import org.daybank.core.site.Site;

class PlaneOfArrayProperties {
    private static final SunPolicy POLICY = SunPolicy.standard();

    private static Plane plane(double tilt, double azimuth) {
        return new Plane(Angle.degrees(tilt), Angle.degrees(azimuth));
    }

    private static MonthlySun sun(double latitude, double clearness, double tilt, double azimuth) {
        return PlaneOfArray.monthly(Sites.withClearness(latitude, clearness), plane(tilt, azimuth), POLICY);
    }

    private static double kilowattHours(SunMonth month) {
        return month.planeOfArray().kilowattHoursPerSquareMetre();
    }

    @Property
    void theHorizontalPlaneReturnsTheHorizontal(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = 0, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll boolean isotropic) {
        SkyModel model = isotropic ? SkyModel.ISOTROPIC : SkyModel.HAY_DAVIES;
        MonthlySun flat = PlaneOfArray.monthly(
                Sites.withClearness(latitude, clearness), plane(0, azimuth), POLICY.withMonthlySkyModel(model));

        for (SunMonth month : flat.months()) {
            double horizontal = month.horizontal().kilowattHoursPerSquareMetre();
            // rounding of some hundred additions
            assertThat(kilowattHours(month)).isCloseTo(horizontal, within(1e-12 * (1 + horizontal)));
        }
    }

    @Property
    void morningAndAfternoonAreAlike(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = 0, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        MonthlySun east = sun(latitude, clearness, tilt, azimuth);
        MonthlySun west = sun(latitude, clearness, tilt, 360 - azimuth);

        for (Month month : Month.values()) {
            assertThat(kilowattHours(west.in(month))).isCloseTo(kilowattHours(east.in(month)), within(1e-9));
        }
    }

    @Property
    void theSouthernHalfOfTheEarthMirrorsTheNorthern(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = 0, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @DoubleRange(min = 0, max = 180) double azimuth,
            @ForAll Month month) {
        SolarDay day = SolarDay.on(Latitude.degrees(latitude), MeanDays.dayOfYear(month), POLICY);
        SolarDay mirrored = new SolarDay(
                Latitude.degrees(-latitude),
                day.dayOfYear(),
                Angle.degrees(-day.declination().degrees()),
                day.sunsetHourAngle(),
                day.dayLength(),
                day.extraterrestrial());
        double wattHours = clearness * day.extraterrestrial().wattHoursPerSquareMetre();
        MeanDay here = new MeanDay(month, day, wattHours, SkyModel.HAY_DAVIES);
        MeanDay there = new MeanDay(month, mirrored, wattHours, SkyModel.HAY_DAVIES);
        View view = View.of(plane(tilt, azimuth), Horizon.OPEN);
        View viewMirrored = View.of(plane(tilt, 180 - azimuth), Horizon.OPEN);

        assertThat(there.beamOn(viewMirrored)).isCloseTo(here.beamOn(view), within(1e-6));
        assertThat(there.skyDiffuseOn(viewMirrored)).isCloseTo(here.skyDiffuseOn(view), within(1e-6));
    }

    @Property
    void noPlaneGetsMoreThanFacingTheSunAllDayWithoutAir(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = 0, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        for (SunMonth month : sun(latitude, clearness, tilt, azimuth).months()) {
            // 1361 W/m² at the nearest, 3.3 % over the mean distance
            double most = month.dayLength().hours() * 1.361 * 1.033;
            assertThat(month.beam().kilowattHoursPerSquareMetre()).isBetween(0.0, most);
            assertThat(kilowattHours(month)).isBetween(0.0, 1.3 * most);
            assertThat(month.diffuseFraction().fraction()).isBetween(0.0, 1.0);
        }
    }

    @Property
    void clearnessSaysTheSameAsItsIrradiation(
            @ForAll @DoubleRange(min = -65, max = 65) double latitude,
            @ForAll @DoubleRange(min = 0.01, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt) {
        MonthlySun byClearness = sun(latitude, clearness, tilt, 160);
        List<Irradiation> inMegajoules = byClearness.months().stream()
                .map(month -> Irradiation.parse(month.horizontal().megajoulesPerSquareMetre() + " MJ/m2"))
                .toList();
        MonthlySun byIrradiation =
                PlaneOfArray.monthly(Sites.withIrradiation(latitude, inMegajoules), plane(tilt, 160), POLICY);

        for (Month month : Month.values()) {
            assertThat(kilowattHours(byIrradiation.in(month)))
                    .isCloseTo(kilowattHours(byClearness.in(month)), within(1e-9));
        }
    }

    @Property(tries = 100)
    void theCourseOfTheDayAddsUpToItsSum(
            @ForAll @DoubleRange(min = -65, max = 65) double latitude,
            @ForAll @DoubleRange(min = 0, max = 0.9) double clearness,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll Month month) {
        Site site = Sites.withClearness(latitude, clearness);
        DayCourse course = PlaneOfArray.meanDay(site, plane(tilt, 200), POLICY, month);
        Irradiation sum = course.planeOfArray().stream()
                .map(irradiance -> irradiance.times(course.slice()))
                .reduce(Irradiation.ZERO, Irradiation::plus);

        assertThat(sum.kilowattHoursPerSquareMetre())
                .isCloseTo(kilowattHours(sun(latitude, clearness, tilt, 200).in(month)), within(1e-9));
    }

    @Property
    void theSolarConstantScalesWhatClearnessYields(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = 1300, max = 1400) double solarConstant) {
        MonthlySun standard = sun(latitude, 0.5, 40, 170);
        MonthlySun scaled = PlaneOfArray.monthly(
                Sites.withClearness(latitude, 0.5),
                plane(40, 170),
                POLICY.withSolarConstant(Irradiance.wattsPerSquareMetre(solarConstant)));

        for (Month month : Month.values()) {
            assertThat(kilowattHours(scaled.in(month)))
                    .isCloseTo(kilowattHours(standard.in(month)) * solarConstant / 1361, within(1e-9));
        }
    }
}
