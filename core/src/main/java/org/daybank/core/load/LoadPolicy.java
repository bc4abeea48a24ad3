package org.daybank.core.load;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with when loads are added up.
 *
 * @param coincidentStarts which starts may fall on the same moment
 * @param startDuration how long a start lasts
 * @param dcWiringEfficiency what arrives at DC loads of what leaves the bank
 * @param inverterEfficiency of the inverter while none is chosen
 * @param inverterIdle idle draw over rating of the inverter while none is chosen
 * @param inverterMargin rating over running peak, less one, of the inverter while none is chosen
 * @param inverterAlwaysOn whether the inverter idles around the clock, or only in hours in which an AC load may run
 */
@RecordBuilder
public record LoadPolicy(
        @Assumed(
                value = "selfSwitching",
                sensible = "all … largest",
                source = "thermostats and pressure switches cannot be held off")
        CoincidentStarts coincidentStarts,

        @Assumed(value = "3 s", least = "0.1 s", most = "60 s", sensible = "0.5–10 s", source = "motors under load")
        TimeSpan startDuration,

        @Assumed(value = "0.97", least = "0.5", most = "1", sensible = "0.95–0.99", source = "3 % drop in DC wiring")
        Ratio dcWiringEfficiency,

        @Assumed(value = "0.92", least = "0.5", most = "1", sensible = "0.85–0.95", source = "typical data sheets")
        Ratio inverterEfficiency,

        @Assumed(value = "0.008", least = "0", most = "0.1", sensible = "0.005–0.02", source = "typical data sheets")
        Ratio inverterIdle,

        @Assumed(value = "0.25", least = "0", most = "2", sensible = "0.1–0.5", source = "growth and heat")
        Ratio inverterMargin,

        @Assumed(value = "true", source = "nobody switches the inverter off at night")
        boolean inverterAlwaysOn)
        implements LoadPolicyBuilder.With {
    private static final LoadPolicy STANDARD = Policies.standard(LoadPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public LoadPolicy {
        Policies.check(
                LoadPolicy.class,
                coincidentStarts,
                startDuration,
                dcWiringEfficiency,
                inverterEfficiency,
                inverterIdle,
                inverterMargin,
                inverterAlwaysOn);
    }

    /** The cited defaults. */
    public static LoadPolicy standard() {
        return STANDARD;
    }
}
