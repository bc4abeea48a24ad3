package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

/**
 * What a planner may argue with when inverters are chosen that feed an array into the grid.
 *
 * @param dcAcRatio power of the modules over that of the inverters that is aimed at
 * @param leastDcAcRatio least that is accepted
 * @param mostDcAcRatio most that is accepted
 * @param openCircuitReserve what is kept free under an inverter's maximum input voltage
 * @param shortCircuitFactor on the array's short-circuit current, for sun brighter than standard
 * @param clippingLimit share of the year's energy that may be lost because the inverters' output is full
 * @param voltageTolerance how far an output voltage may lie from the service's
 * @param phaseImbalance most by which one line may be fed more than another
 * @param branchDevice rating of the overcurrent device of a branch circuit of microinverters
 * @param continuousFactor on a current that flows for hours, against the rating of its overcurrent device
 */
@RecordBuilder
public record GridPolicy(
        @Assumed(value = "1.2", least = "0.5", most = "2.5", sensible = "1.0–1.4", source = "clipping against price")
        Ratio dcAcRatio,

        @Assumed(value = "1.0", least = "0.1", most = "2.5", sensible = "0.9–1.1", source = "custom")
        Ratio leastDcAcRatio,

        @Assumed(value = "1.4", least = "0.5", most = "3", sensible = "1.3–1.5", source = "custom")
        Ratio mostDcAcRatio,

        @Assumed(value = "0.02", least = "0", most = "0.3", sensible = "0–0.05", source = "tolerance of the data sheet")
        Ratio openCircuitReserve,

        @Assumed(value = "1.25", least = "1", most = "1.6", sensible = "1.25", source = "IEC 62548-1; NFPA 70 690.8(A)")
        Ratio shortCircuitFactor,

        @Assumed(value = "0.02", least = "0", most = "0.5", sensible = "0–0.05", source = "custom")
        Ratio clippingLimit,

        @Assumed(value = "0.05", least = "0", most = "0.1", source = "IEC 60038 allows 10 % with wiring drop included")
        Ratio voltageTolerance,

        @Assumed(
                value = "4600 VA",
                least = "0 VA",
                most = "100 kVA",
                sensible = "3680–4600 VA",
                source = "VDE-AR-N 4105: 20 A on a line of 230 V")
        ApparentPower phaseImbalance,

        @Assumed(value = "20 A", least = "6 A", most = "63 A", sensible = "16–20 A", source = "custom")
        Current branchDevice,

        @Assumed(value = "1.25", least = "1", most = "1.6", source = "NFPA 70 690.9(B): continuous current")
        Ratio continuousFactor)
        implements GridPolicyBuilder.With {
    private static final GridPolicy STANDARD = Policies.standard(GridPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range, or the aim lies outside what is
     *     accepted
     */
    public GridPolicy {
        Policies.check(
                GridPolicy.class,
                dcAcRatio,
                leastDcAcRatio,
                mostDcAcRatio,
                openCircuitReserve,
                shortCircuitFactor,
                clippingLimit,
                voltageTolerance,
                phaseImbalance,
                branchDevice,
                continuousFactor);
        new Validation()
                .that(
                        leastDcAcRatio.compareTo(dcAcRatio) <= 0 && dcAcRatio.compareTo(mostDcAcRatio) <= 0,
                        "dcAcRatio",
                        "inconsistent",
                        () ->
                                "dcAcRatio must lie between leastDcAcRatio, which is %s, and mostDcAcRatio, which is %s, but is %s"
                                        .formatted(leastDcAcRatio, mostDcAcRatio, dcAcRatio))
                .done();
    }

    /** The cited defaults. */
    public static GridPolicy standard() {
        return STANDARD;
    }
}
