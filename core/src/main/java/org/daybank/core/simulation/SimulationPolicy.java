package org.daybank.core.simulation;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.bank.RatioByFamily;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when a system is run through the hours.
 *
 * @param essentialDepthOfDischarge depth down to which essential loads are kept; the others are cut off at the depth that the
 *     bank was sized with
 * @param reconnectRise by how much the state of charge must rise over a cut-off before its loads come back; at 0 loads take
 *     whatever there is and are never cut off
 * @param absorptionFrom state of charge from which a bank takes less and less current
 * @param dischargeLossShare which part of the battery's losses falls on the way out
 * @param initialCharge state of charge at the beginning
 * @param settle whether the first year is run once uncounted, so that it begins as such years end
 */
@RecordBuilder
public record SimulationPolicy(
        @Bounds(minimum = "0.05", maximum = "1", sensible = "lead-acid 0.6–0.8, lithium 0.8–0.95")
        @Assumed(value = "leadAcid 0.8, lithium 0.9", source = "what may be taken now and then without ruin")
        RatioByFamily essentialDepthOfDischarge,

        @Bounds(minimum = "0", maximum = "0.9", sensible = "0.1–0.3")
        @Assumed(value = "0.15", source = "customary reconnect voltages")
        Ratio reconnectRise,

        @Bounds(minimum = "0.3", maximum = "0.999", sensible = "lead-acid 0.75–0.9, lithium 0.9–0.98")
        @Assumed(
                value = "leadAcid 0.8, lithium 0.95",
                source = "where the absorption voltage is customarily reached; from there on the current decays")
        RatioByFamily absorptionFrom,

        @Bounds(minimum = "0", maximum = "1", sensible = "0–0.5")
        @Assumed(value = "0", source = "rated capacity is what comes out, so that losses fall on charging")
        Ratio dischargeLossShare,

        @Bounds(minimum = "0", maximum = "1") @Assumed(value = "1", source = "handed over full")
        Ratio initialCharge,

        @Assumed(value = "true", source = "a year among others")
        boolean settle)
        implements SimulationPolicyBuilder.With {
    private static final SimulationPolicy STANDARD = Defaults.of(SimulationPolicy.class);

    /**
     * Validates each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public SimulationPolicy {
        Validation.of(
                        SimulationPolicy.class,
                        essentialDepthOfDischarge,
                        reconnectRise,
                        absorptionFrom,
                        dischargeLossShare,
                        initialCharge,
                        settle)
                .done();
    }

    /** The cited defaults. */
    public static SimulationPolicy standard() {
        return STANDARD;
    }

    /** Refuses a bank that begins emptier than the depth at which its loads are cut off. */
    public void checkStart(Validation checks, String field, Ratio depthOfDischarge) {
        checks.that(
                initialCharge.fraction() + depthOfDischarge.fraction() >= 1,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "initialCharge must be at least what a depth of discharge of %s leaves, but was %s."
                        .formatted(depthOfDischarge, initialCharge));
    }
}
