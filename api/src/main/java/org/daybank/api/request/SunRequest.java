package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.quantity.Angle;
import org.daybank.core.site.Site;
import org.daybank.core.sun.BestTilt;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;
import org.daybank.core.sun.SunPolicy;

/**
 * How much sun falls on a plane, month by month?
 *
 * @param site where
 * @param plane how it lies
 * @param policy what is assumed
 */
public record SunRequest(Site site, Plane plane, SunPolicy policy) {

    /**
     * Sunshine on the plane and the best tilt for its azimuth.
     *
     * @param sun month by month
     * @param bestTiltOfYear tilt that gathers the most over a year
     */
    public record Answer(@Inline MonthlySun sun, Angle bestTiltOfYear) {}

    /** Asks the library. */
    public Answer answer() {
        return new Answer(
                PlaneOfArray.monthly(site, plane, policy),
                BestTilt.forYear(site, plane.azimuth(), policy).plane().tilt());
    }
}
