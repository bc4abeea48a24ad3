package org.daybank.core.load;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

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

        @Assumed(value = "3 d", least = "0.1 d", most = "60 d", source = "IEEE 1562: more when critical")
        TimeSpan autonomy) {
    /** Most loads that one budget takes. */
    public static final int MOST_LOADS = 500;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when there is no load, or too many
     */
    public EnergyDemand {
        new Validation()
                .notEmpty("loads", loads)
                .that(
                        loads == null || loads.size() <= MOST_LOADS,
                        "loads",
                        "outOfRange",
                        "loads must be at most %s but are %s".formatted(MOST_LOADS, loads == null ? 0 : loads.size()))
                .done();
        loads = List.copyOf(loads);
        latitude = Policies.otherwise(latitude, EnergyDemand.class, "latitude");
        autonomy = Policies.otherwise(autonomy, EnergyDemand.class, "autonomy");
        Policies.check(EnergyDemand.class, loads, latitude, autonomy);
    }
}
