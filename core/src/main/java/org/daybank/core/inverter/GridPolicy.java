package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

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
        @Bounds(minimum = "0.5", maximum = "2.5", sensible = "1.0–1.4")
        @Assumed(value = "1.2", source = "clipping against price")
        Ratio dcAcRatio,

        @Bounds(minimum = "0.1", maximum = "2.5", sensible = "0.9–1.1") @Assumed(value = "1.0", source = "custom")
        Ratio leastDcAcRatio,

        @Bounds(minimum = "0.5", maximum = "3", sensible = "1.3–1.5") @Assumed(value = "1.4", source = "custom")
        Ratio mostDcAcRatio,

        @Bounds(minimum = "0", maximum = "0.3", sensible = "0–0.05")
        @Assumed(value = "0.02", source = "tolerance of the data sheet")
        Ratio openCircuitReserve,

        @Bounds(minimum = "1", maximum = "1.6", sensible = "1.25")
        @Assumed(value = "1.25", source = "IEC 62548-1; NFPA 70 690.8(A)")
        Ratio shortCircuitFactor,

        @Bounds(minimum = "0", maximum = "0.5", sensible = "0–0.05") @Assumed(value = "0.02", source = "custom")
        Ratio clippingLimit,

        @Bounds(minimum = "0", maximum = "0.1")
        @Assumed(value = "0.05", source = "IEC 60038 allows 10 % with wiring drop included")
        Ratio voltageTolerance,

        @Bounds(minimum = "0 VA", maximum = "100 kVA", sensible = "3680–4600 VA")
        @Assumed(value = "4600 VA", source = "VDE-AR-N 4105: 20 A on a line of 230 V")
        ApparentPower phaseImbalance,

        @Bounds(minimum = "6 A", maximum = "63 A", sensible = "16–20 A") @Assumed(value = "20 A", source = "custom")
        Current branchDevice,

        @Bounds(minimum = "1", maximum = "1.6")
        @Assumed(value = "1.25", source = "NFPA 70 690.9(B): continuous current")
        Ratio continuousFactor)
        implements GridPolicyBuilder.With {
    private static final GridPolicy STANDARD = Defaults.of(GridPolicy.class);

    /**
     * Validates the policy.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds, or the aim lies outside what is accepted
     */
    public GridPolicy {
        dcAcRatio = Defaults.otherwise(dcAcRatio, GridPolicy.class, "dcAcRatio");
        leastDcAcRatio = Defaults.otherwise(leastDcAcRatio, GridPolicy.class, "leastDcAcRatio");
        mostDcAcRatio = Defaults.otherwise(mostDcAcRatio, GridPolicy.class, "mostDcAcRatio");
        openCircuitReserve = Defaults.otherwise(openCircuitReserve, GridPolicy.class, "openCircuitReserve");
        shortCircuitFactor = Defaults.otherwise(shortCircuitFactor, GridPolicy.class, "shortCircuitFactor");
        clippingLimit = Defaults.otherwise(clippingLimit, GridPolicy.class, "clippingLimit");
        voltageTolerance = Defaults.otherwise(voltageTolerance, GridPolicy.class, "voltageTolerance");
        phaseImbalance = Defaults.otherwise(phaseImbalance, GridPolicy.class, "phaseImbalance");
        branchDevice = Defaults.otherwise(branchDevice, GridPolicy.class, "branchDevice");
        continuousFactor = Defaults.otherwise(continuousFactor, GridPolicy.class, "continuousFactor");
        Validation.of(
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
                        continuousFactor)
                .notBelow("dcAcRatio", dcAcRatio, "leastDcAcRatio", leastDcAcRatio)
                .notAbove("dcAcRatio", dcAcRatio, "mostDcAcRatio", mostDcAcRatio)
                .done();
    }

    /** The cited defaults. */
    public static GridPolicy standard() {
        return STANDARD;
    }
}
