package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when charge controllers are chosen.
 *
 * @param openCircuitReserve what is kept free under a controller's maximum input voltage
 * @param shortCircuitFactor on the array's short-circuit current, for sun brighter than standard
 * @param clippingLimit share of the year's energy that may be lost because the controller's output is full
 * @param diversionFactor power of a diversion load over that of the array that feeds it
 */
@RecordBuilder
public record ChargerPolicy(
        @Bounds(minimum = "0", maximum = "0.3", sensible = "0–0.05")
        @Assumed(value = "0.02", source = "tolerance of the data sheet")
        Ratio openCircuitReserve,

        @Bounds(minimum = "1", maximum = "1.6", sensible = "1.25")
        @Assumed(value = "1.25", source = "IEC 62548-1; NFPA 70 690.8(A)")
        Ratio shortCircuitFactor,

        @Bounds(minimum = "0", maximum = "0.5", sensible = "0–0.05") @Assumed(value = "0.02", source = "custom")
        Ratio clippingLimit,

        @Bounds(minimum = "1", maximum = "3", sensible = "1.5–2") @Assumed(value = "1.5", source = "NFPA 70 690.72(B)")
        Ratio diversionFactor)
        implements ChargerPolicyBuilder.With {
    private static final ChargerPolicy STANDARD = Defaults.of(ChargerPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public ChargerPolicy {
        Validation.of(ChargerPolicy.class, openCircuitReserve, shortCircuitFactor, clippingLimit, diversionFactor)
                .done();
    }

    /** The cited defaults. */
    public static ChargerPolicy standard() {
        return STANDARD;
    }
}
