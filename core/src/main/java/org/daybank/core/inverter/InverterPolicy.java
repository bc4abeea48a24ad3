package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

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
        @Bounds(minimum = "0", maximum = "2", sensible = "0.1–0.5") @Assumed(value = "0.25", source = "growth and heat")
        Ratio margin,

        @Bounds(minimum = "0", maximum = "0.1")
        @Assumed(value = "0.05", source = "IEC 60038 allows 10 % with wiring drop included")
        Ratio voltageTolerance,

        @Bounds(minimum = "0 m", maximum = "5000 m")
        @Assumed(value = "2000 m", source = "IEC 62109-1 rates equipment up to 2000 m")
        Length altitudeWithoutDerating,

        @Bounds(minimum = "0", maximum = "0.05")
        @Assumed(value = "0.01", source = "thinner air cools less: customary 1 % for each 100 m")
        Ratio altitudeDerating)
        implements InverterPolicyBuilder.With {
    private static final InverterPolicy STANDARD = Defaults.of(InverterPolicy.class);

    /**
     * Validates the policy.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds or contradicts another
     */
    public InverterPolicy {
        margin = Defaults.otherwise(margin, InverterPolicy.class, "margin");
        voltageTolerance = Defaults.otherwise(voltageTolerance, InverterPolicy.class, "voltageTolerance");
        altitudeWithoutDerating =
                Defaults.otherwise(altitudeWithoutDerating, InverterPolicy.class, "altitudeWithoutDerating");
        altitudeDerating = Defaults.otherwise(altitudeDerating, InverterPolicy.class, "altitudeDerating");
        Validation.of(InverterPolicy.class, margin, voltageTolerance, altitudeWithoutDerating, altitudeDerating)
                .done();
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
