package org.daybank.core.load;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
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
        @Bounds(minimumItems = 1, maximumItems = EnergyDemand.MOST_LOADS)
        List<Load> loads,

        @Bounds(minimum = "-90", maximum = "90") @Assumed(value = "0", source = "twelve hours of night all year round")
        Latitude latitude,

        @Bounds(minimum = "0.1 d", maximum = "60 d") @Assumed(value = "3 d", source = "IEEE 1562: more when critical")
        TimeSpan autonomy) {
    /** Largest number of loads in one budget. */
    public static final int MOST_LOADS = 500;

    /** Largest power that all loads draw together when running. */
    private static final Power LARGEST_TOTAL = Power.kilowatts(10_000);

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no load, or too many, or one is missing from the list
     */
    public EnergyDemand {
        latitude = Defaults.otherwise(latitude, EnergyDemand.class, "latitude");
        autonomy = Defaults.otherwise(autonomy, EnergyDemand.class, "autonomy");
        Validation.of(EnergyDemand.class, loads, latitude, autonomy).done();
        loads = List.copyOf(loads);
        Power total = loads.stream().map(Load::runningPower).reduce(Power.ZERO, Power::plus);
        new Validation()
                .that(
                        total.compareTo(LARGEST_TOTAL) <= 0,
                        "loads",
                        ProblemCode.OUT_OF_RANGE,
                        () -> "loads must draw at most %s together, but draw %s.".formatted(LARGEST_TOTAL, total))
                .done();
    }
}
