package org.daybank.core.grid;

import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

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
        @Assumed(value = "3", least = "1", most = "30", source = "enough for the mean of a year")
        int years,

        @Assumed(value = "1", source = "any number; the same one makes the same weather")
        int seed,

        LoadPolicy load,
        ArrayPolicy array,
        SunPolicy sun,
        SyntheticPolicy synthetic,
        BusbarPolicy busbar) {
    private static final BillPolicy STANDARD = Policies.standard(BillPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public BillPolicy {
        Policies.check(BillPolicy.class, years, seed, load, array, sun, synthetic, busbar);
    }

    /** The cited defaults. */
    public static BillPolicy standard() {
        return STANDARD;
    }
}
