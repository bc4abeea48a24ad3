package org.daybank.core.sun;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when weather is made up from monthly means.
 *
 * @param airSpread standard deviation of the days' mean temperature around the season
 * @param airPersistence how much of a day's distance from the season is left the next day
 * @param swingCoefficient k in {@code K = k · √(T_max − T_min)}, K being the day's clearness and T in kelvins
 */
@RecordBuilder
public record SyntheticPolicy(
        @Bounds(minimum = "0 K", maximum = "15 K", sensible = "2 K by the sea, 5 K inland")
        @Assumed(value = "3.5 K", source = "middle latitudes, between coast and inland")
        TemperatureDifference airSpread,

        @Bounds(minimum = "0", maximum = "0.99", sensible = "0.6–0.8")
        @Assumed(value = "0.7", source = "weather changes within some three days")
        Ratio airPersistence,

        @Bounds(minimum = "0.1", maximum = "0.3", sensible = "0.16 inland, 0.19 by the sea")
        @Assumed(value = "0.17", source = "FAO Irrigation and Drainage Paper 56, eq. 50")
        Ratio swingCoefficient)
        implements SyntheticPolicyBuilder.With {
    private static final SyntheticPolicy STANDARD = Defaults.of(SyntheticPolicy.class);

    /**
     * Validates each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public SyntheticPolicy {
        Validation.of(SyntheticPolicy.class, airSpread, airPersistence, swingCoefficient)
                .done();
    }

    /** The cited defaults. */
    public static SyntheticPolicy standard() {
        return STANDARD;
    }
}
