package org.daybank.core.load;

import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * What the system's own parts draw from the bank around the clock: charge controllers, and the heater of a bank in the cold.
 *
 * @param meanDay power on the mean day of each month, from January
 * @param worstRun power over the worst run of each month
 */
public record StandingDraw(
        @Bounds(minimum = "0 kW", maximum = "100000 kW", minimumItems = 12, maximumItems = 12)
        List<Power> meanDay,

        @Bounds(minimum = "0 kW", maximum = "100000 kW", minimumItems = 12, maximumItems = 12)
        List<Power> worstRun) {
    /** Nothing. */
    public static final StandingDraw NONE = steady(Power.ZERO);

    /** Validates the components and keeps copies. */
    public StandingDraw {
        Validation.of(StandingDraw.class, meanDay, worstRun).done();
        meanDay = List.copyOf(meanDay);
        worstRun = List.copyOf(worstRun);
    }

    /** The same power all year. */
    public static StandingDraw steady(Power power) {
        List<Power> months = Collections.nCopies(12, power);
        return new StandingDraw(months, months);
    }
}
