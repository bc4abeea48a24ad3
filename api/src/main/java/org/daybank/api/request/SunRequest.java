package org.daybank.api.request;

import java.util.List;
import org.daybank.api.wire.Inline;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.BestTilt;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySky;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;
import org.daybank.core.sun.SunPolicy;
import org.jspecify.annotations.Nullable;

/**
 * How much sun falls on a plane, month by month?
 *
 * @param site where
 * @param plane how it lies
 * @param weather hours of a year there; absent when only monthly means are known
 * @param policy what is assumed
 */
public record SunRequest(Site site, Plane plane, @Nullable WeatherYear weather, SunPolicy policy) {
    /** Refuses what is missing or out of range. */
    public SunRequest {
        Validation.of(SunRequest.class, site, plane, weather, policy).done();
    }

    /**
     * Sunshine on the plane and the best tilt for its azimuth.
     *
     * @param sun month by month, from the months of the site
     * @param bestTiltOfYear tilt that gathers the most over a year
     * @param hours sums of the weather year's hours; absent without one
     */
    public record Answer(
            @Inline MonthlySun sun,
            Angle bestTiltOfYear,
            @Nullable HourlySums hours) {}

    /**
     * Sums over the hours of a weather year.
     *
     * @param dailyIrradiation on the plane on the mean day of each month, from January
     * @param yearly on the plane in the year
     */
    public record HourlySums(List<Irradiation> dailyIrradiation, Irradiation yearly) {}

    /** Asks the library. */
    public Answer answer() {
        return new Answer(
                PlaneOfArray.monthly(site, plane, policy),
                BestTilt.forYear(site, plane.azimuth(), policy).plane().tilt(),
                weather == null ? null : sums(weather));
    }

    private HourlySums sums(WeatherYear year) {
        HourlySun onPlane = HourlySky.of(year, policy)
                .on(ExposureBuilder.builder()
                        .plane(plane)
                        .horizon(site.horizon())
                        .albedo(site.months().albedo())
                        .build());
        return new HourlySums(onPlane.dailyByMonth(), onPlane.yearly());
    }
}
