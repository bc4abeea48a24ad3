package org.daybank.core.load;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

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
        @Bounds(sensible = "all … largest")
        @Assumed(value = "selfSwitching", source = "thermostats and pressure switches cannot be held off")
        CoincidentStarts coincidentStarts,

        @Bounds(minimum = "0.1 s", maximum = "60 s", sensible = "0.5–10 s")
        @Assumed(value = "3 s", source = "motors under load")
        TimeSpan startDuration,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.95–0.99")
        @Assumed(value = "0.97", source = "3 % drop in DC wiring")
        Ratio dcWiringEfficiency,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.85–0.95")
        @Assumed(value = "0.92", source = "typical data sheets")
        Ratio inverterEfficiency,

        @Bounds(minimum = "0", maximum = "0.1", sensible = "0.005–0.02")
        @Assumed(value = "0.008", source = "typical data sheets")
        Ratio inverterIdle,

        @Bounds(minimum = "0", maximum = "2", sensible = "0.1–0.5") @Assumed(value = "0.25", source = "growth and heat")
        Ratio inverterMargin,

        @Assumed(value = "true", source = "nobody switches the inverter off at night")
        boolean inverterAlwaysOn)
        implements LoadPolicyBuilder.With {
    private static final LoadPolicy STANDARD = Defaults.of(LoadPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public LoadPolicy {
        Validation.of(
                        LoadPolicy.class,
                        coincidentStarts,
                        startDuration,
                        dcWiringEfficiency,
                        inverterEfficiency,
                        inverterIdle,
                        inverterMargin,
                        inverterAlwaysOn)
                .done();
    }

    /** The cited defaults. */
    public static LoadPolicy standard() {
        return STANDARD;
    }
}
