package org.daybank.core.sun;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with when weather is made up from monthly means.
 *
 * @param airSpread standard deviation of the days' mean temperature around the season
 * @param airPersistence how much of a day's distance from the season is left the next day
 * @param swingCoefficient k in {@code K = k · √(T_max − T_min)}, K being the day's clearness and T in kelvins
 */
@RecordBuilder
public record SyntheticPolicy(
        @Assumed(
                value = "3.5 K",
                least = "0 K",
                most = "15 K",
                sensible = "2 K by the sea, 5 K inland",
                source = "middle latitudes, between coast and inland")
        TemperatureDifference airSpread,

        @Assumed(
                value = "0.7",
                least = "0",
                most = "0.99",
                sensible = "0.6–0.8",
                source = "weather changes within some three days")
        Ratio airPersistence,

        @Assumed(
                value = "0.17",
                least = "0.1",
                most = "0.3",
                sensible = "0.16 inland, 0.19 by the sea",
                source = "FAO Irrigation and Drainage Paper 56, eq. 50")
        Ratio swingCoefficient)
        implements SyntheticPolicyBuilder.With {
    private static final SyntheticPolicy STANDARD = Policies.standard(SyntheticPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public SyntheticPolicy {
        Policies.check(SyntheticPolicy.class, airSpread, airPersistence, swingCoefficient);
    }

    /** The cited defaults. */
    public static SyntheticPolicy standard() {
        return STANDARD;
    }
}
