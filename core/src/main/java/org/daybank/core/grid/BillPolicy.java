package org.daybank.core.grid;

import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;

/**
 * What a planner may argue with on the way from sun and loads to a bill.
 *
 * @param years that are made up where there is no weather year
 * @param seed of made-up weather
 * @param load what is assumed of the loads
 * @param array what is assumed of the array
 * @param sun what is assumed of the sun
 * @param synthetic what is assumed of made-up weather
 * @param busbar what is assumed where the inverter feeds a panel
 */
public record BillPolicy(
        @Bounds(minimum = "1", maximum = "30") @Assumed(value = "3", source = "enough for the mean of a year")
        int years,

        @Bounds(minimum = "0", maximum = "2147483647")
        @Assumed(value = "1", source = "any number; the same one makes the same weather")
        int seed,

        LoadPolicy load,
        ArrayPolicy array,
        SunPolicy sun,
        SyntheticPolicy synthetic,
        BusbarPolicy busbar) {
    private static final BillPolicy STANDARD = Defaults.of(BillPolicy.class);

    /**
     * Validates the policy.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public BillPolicy {
        Validation.of(BillPolicy.class, years, seed, load, array, sun, synthetic, busbar)
                .done();
    }

    /** The cited defaults. */
    public static BillPolicy standard() {
        return STANDARD;
    }
}
