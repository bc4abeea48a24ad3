package org.daybank.core.sun;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with when sunshine is reckoned.
 *
 * @param solarConstant what the sun sends on a plane that faces it, outside the air at the mean distance
 * @param monthlySkyModel how diffuse light is spread over the sky on the mean day of a month
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
        SkyModel monthlySkyModel)
        implements SunPolicyBuilder.With {
    private static final SunPolicy STANDARD = Policies.standard(SunPolicy.class);

    /**
     * Checks each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public SunPolicy {
        Policies.check(SunPolicy.class, solarConstant, monthlySkyModel);
    }

    /** The cited defaults. */
    public static SunPolicy standard() {
        return STANDARD;
    }
}
