package org.daybank.core.load;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What an energy budget is drawn up for.
 *
 * @param loads everything that must run, at least one
 * @param latitude of the site, from which it follows what is dark when; left out, every night lasts twelve hours
 * @param autonomy length of the run of days that the bank must carry
 */
@RecordBuilder
public record EnergyDemand(
        List<Load> loads,

        @Assumed(value = "0", source = "twelve hours of night all year round")
        Latitude latitude,

        @Bounds(minimum = "0.1 d", maximum = "60 d") @Assumed(value = "3 d", source = "IEEE 1562: more when critical")
        TimeSpan autonomy) {
    /** Most loads that one budget takes. */
    public static final int MOST_LOADS = 500;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no load, or too many
     */
    public EnergyDemand {
        new Validation()
                .notEmpty("loads", loads)
                .that(
                        loads == null || loads.size() <= MOST_LOADS,
                        "loads",
                        ProblemCode.OUT_OF_RANGE,
                        "loads must be at most %d but were %s.".formatted(MOST_LOADS, loads == null ? 0 : loads.size()))
                .done();
        loads = List.copyOf(loads);
        latitude = Defaults.otherwise(latitude, EnergyDemand.class, "latitude");
        autonomy = Defaults.otherwise(autonomy, EnergyDemand.class, "autonomy");
        Validation.of(EnergyDemand.class, loads, latitude, autonomy).done();
    }
}
