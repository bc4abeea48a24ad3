package org.daybank.core.sun;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

/**
 * What a planner may argue with when sunshine is reckoned.
 *
 * @param solarConstant what the sun sends on a plane that faces it, outside the air at the mean distance
 * @param monthlySkyModel how diffuse light is spread over the sky on the mean day of a month; isotropic or Hay and Davies
 * @param hourlySkyModel how diffuse light is spread over the sky in a real hour
 * @param cover what the light passes on its way into the cells, in hours of a year
 * @param daytimeOverMeanAir how much warmer the air is while the sun shines than the month's mean
 */
@RecordBuilder
public record SunPolicy(
        @Assumed(
                value = "1361 W/m2",
                least = "1300 W/m2",
                most = "1400 W/m2",
                sensible = "1361 W/m²; older tables use 1353 or 1367",
                source = "Kopp and Lean 2011")
        Irradiance solarConstant,

        @Assumed(value = "hayDavies", source = "Hay and Davies 1980, as Duffie and Beckman recommend it for means")
        SkyModel monthlySkyModel,

        @Assumed(value = "perez", source = "Perez and others 1990, the closest to measurements in most comparisons")
        SkyModel hourlySkyModel,

        @Assumed(value = "glass", source = "modules are covered by glass; De Soto, Klein and Beckman 2006, eq. 13–14")
        Cover cover,

        @Assumed(
                value = "3 K",
                least = "0 K",
                most = "15 K",
                sensible = "2–5 K",
                source = "customary daily swing of air")
        TemperatureDifference daytimeOverMeanAir)
        implements SunPolicyBuilder.With {
    private static final SunPolicy STANDARD = Policies.standard(SunPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public SunPolicy {
        Policies.check(SunPolicy.class, solarConstant, monthlySkyModel, hourlySkyModel, cover, daytimeOverMeanAir);
        new Validation()
                .that(
                        monthlySkyModel != SkyModel.PEREZ,
                        "monthlySkyModel",
                        "outOfRange",
                        "monthlySkyModel must be isotropic or hayDavies but is perez, which was made for hours")
                .done();
    }

    /** The cited defaults. */
    public static SunPolicy standard() {
        return STANDARD;
    }
}
