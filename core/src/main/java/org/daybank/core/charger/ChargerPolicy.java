package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

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
        @Assumed(value = "0.02", least = "0", most = "0.3", sensible = "0–0.05", source = "tolerance of the data sheet")
        Ratio openCircuitReserve,

        @Assumed(value = "1.25", least = "1", most = "1.6", sensible = "1.25", source = "IEC 62548-1; NFPA 70 690.8(A)")
        Ratio shortCircuitFactor,

        @Assumed(value = "0.02", least = "0", most = "0.5", sensible = "0–0.05", source = "custom")
        Ratio clippingLimit,

        @Assumed(value = "1.5", least = "1", most = "3", sensible = "1.5–2", source = "NFPA 70 690.72(B)")
        Ratio diversionFactor)
        implements ChargerPolicyBuilder.With {
    private static final ChargerPolicy STANDARD = Policies.standard(ChargerPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public ChargerPolicy {
        Policies.check(ChargerPolicy.class, openCircuitReserve, shortCircuitFactor, clippingLimit, diversionFactor);
    }

    /** The cited defaults. */
    public static ChargerPolicy standard() {
        return STANDARD;
    }
}
