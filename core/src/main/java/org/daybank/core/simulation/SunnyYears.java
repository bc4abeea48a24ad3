package org.daybank.core.simulation;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.Exposure;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySky;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.daybank.core.sun.SyntheticWeather;

/**
 * Weather years turned onto the plane of an array, once for every system that may stand under them.
 *
 * @param years in the order in which they follow each other
 */
public record SunnyYears(
        @Bounds(minimumItems = 1, maximumItems = SunnyYears.MOST)
        List<Year> years) {
    /** Years beyond which none are run. */
    public static final int MOST = 1000;

    /**
     * One year.
     *
     * @param sun on the array
     * @param air temperature in °C
     */
    public record Year(HourlySun sun, HourlySeries air) {
        /**
         * Refuses what is missing.
         *
         * @throws org.daybank.core.schema.InvalidInput when either is absent
         */
        public Year {
            Validation.of(Year.class, sun, air).done();
        }
    }

    /**
     * Keeps a copy.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no year, or more than {@value #MOST}
     */
    public SunnyYears {
        Validation.of(SunnyYears.class, years).done();
        years = List.copyOf(years);
    }

    /**
     * Turns weather years onto a plane.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no year, or one has no air temperature
     */
    public static SunnyYears of(List<WeatherYear> weather, Exposure exposure, SunPolicy policy) {
        Validation checks = new Validation().notEmpty("weather", weather);
        for (int i = 0; i < weather.size(); i++) {
            checks.required("weather/" + i + "/air", weather.get(i).air());
        }
        checks.done();
        return new SunnyYears(
                weather.stream().map(year -> turned(year, exposure, policy)).toList());
    }

    /**
     * Makes up years from the twelve means of a site; the same seed gives the same years, whatever their number.
     *
     * @param count from 1 to {@value #MOST}
     * @throws org.daybank.core.schema.InvalidInput when the count is out of range, or a month gets more sun than there is
     */
    public static SunnyYears synthetic(
            Site site, Plane plane, long seed, int count, SunPolicy policy, SyntheticPolicy synthetic) {
        new Validation().within("years", count, 1, MOST).done();
        Exposure exposure = exposure(site, plane);
        return new SunnyYears(IntStream.range(0, count)
                .parallel()
                .mapToObj(number -> SyntheticWeather.year(site, seed, number, policy, synthetic))
                .map(year -> turned(year, exposure, policy))
                .toList());
    }

    /** How a plane lies at a site. */
    public static Exposure exposure(Site site, Plane plane) {
        return ExposureBuilder.builder()
                .plane(plane)
                .horizon(site.horizon())
                .albedo(site.months().albedo())
                .build();
    }

    private static Year turned(WeatherYear weather, Exposure exposure, SunPolicy policy) {
        HourlySeries air = weather.air();
        if (air == null) {
            throw new IllegalArgumentException("A weather year without air temperature was not refused");
        }
        return new Year(HourlySky.of(weather, policy).on(exposure), air);
    }
}
