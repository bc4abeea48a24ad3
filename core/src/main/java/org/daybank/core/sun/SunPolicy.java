package org.daybank.core.sun;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

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
        @Bounds(minimum = "1300 W/m2", maximum = "1400 W/m2", sensible = "1361 W/m²; older tables use 1353 or 1367")
        @Assumed(value = "1361 W/m2", source = "Kopp and Lean 2011")
        Irradiance solarConstant,

        @Assumed(value = "hayDavies", source = "Hay and Davies 1980, as Duffie and Beckman recommend it for means")
        SkyModel monthlySkyModel,

        @Assumed(value = "perez", source = "Perez and others 1990, the closest to measurements in most comparisons")
        SkyModel hourlySkyModel,

        @Assumed(value = "glass", source = "modules are covered by glass; De Soto, Klein and Beckman 2006, eq. 13–14")
        Cover cover,

        @Bounds(minimum = "0 K", maximum = "15 K", sensible = "2–5 K")
        @Assumed(value = "3 K", source = "customary daily swing of air")
        TemperatureDifference daytimeOverMeanAir)
        implements SunPolicyBuilder.With {
    private static final SunPolicy STANDARD = Defaults.of(SunPolicy.class);

    /**
     * Validates each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public SunPolicy {
        Validation.of(SunPolicy.class, solarConstant, monthlySkyModel, hourlySkyModel, cover, daytimeOverMeanAir)
                .that(
                        monthlySkyModel != SkyModel.PEREZ,
                        "monthlySkyModel",
                        ProblemCode.OUT_OF_RANGE,
                        "monthlySkyModel must be isotropic or hayDavies but is perez, which was made for hours")
                .done();
    }

    /** The cited defaults. */
    public static SunPolicy standard() {
        return STANDARD;
    }
}
