package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with when inverters are chosen.
 *
 * @param margin added to the running peak, in watts and in volt-amperes
 * @param voltageTolerance how far an output voltage may lie from the service's
 * @param altitudeWithoutDerating height up to which ratings hold
 * @param altitudeDerating share of the power lost for each 100 m above
 */
@RecordBuilder
public record InverterPolicy(
        @Assumed(value = "0.25", least = "0", most = "2", sensible = "0.1–0.5", source = "growth and heat")
        Ratio margin,

        @Assumed(value = "0.05", least = "0", most = "0.1", source = "IEC 60038 allows 10 % with wiring drop included")
        Ratio voltageTolerance,

        @Assumed(value = "2000 m", least = "0 m", most = "5000 m", source = "IEC 62109-1 rates equipment up to 2000 m")
        Length altitudeWithoutDerating,

        @Assumed(
                value = "0.01",
                least = "0",
                most = "0.05",
                source = "thinner air cools less: customary 1 % for each 100 m")
        Ratio altitudeDerating)
        implements InverterPolicyBuilder.With {
    private static final InverterPolicy STANDARD = Policies.standard(InverterPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public InverterPolicy {
        Policies.check(InverterPolicy.class, margin, voltageTolerance, altitudeWithoutDerating, altitudeDerating);
    }

    /** The cited defaults. */
    public static InverterPolicy standard() {
        return STANDARD;
    }

    /** Share of the power that is left at a height. */
    Ratio altitudeFactor(Length elevation) {
        double hundreds = Math.max(0, elevation.minus(altitudeWithoutDerating).metres() / 100);
        return Ratio.of(Math.max(0, 1 - hundreds * altitudeDerating.fraction()));
    }
}
