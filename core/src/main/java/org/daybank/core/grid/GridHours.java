package org.daybank.core.grid;

import java.util.Arrays;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/**
 * The hours of a year of an array and the loads beside it, in W of AC.
 *
 * @param array what it offers, before its inverters' limit
 * @param load what the loads ask
 * @param calendar which day each hour falls on
 */
public record GridHours(HourlySeries array, HourlySeries load, HourCalendar calendar) {
    /**
     * Validates the hours.
     *
     * @throws org.daybank.core.schema.InvalidInput when a series is missing, not as long as the year, or anywhere below zero
     */
    public GridHours {
        Validation checks = Validation.of(GridHours.class, array, load, calendar);
        if (array != null && load != null && calendar != null) {
            check(checks, "array", array, calendar);
            check(checks, "load", load, calendar);
        }
        checks.done();
    }

    /**
     * The same year of an outage: the array within its inverters' limit, and what the essential loads draw from a bank through
     * an inverter of one stated efficiency.
     */
    public GridHours ofEssentials(LoadProfile loads, Power inverterPower) {
        double most = inverterPower.watts();
        return new GridHours(
                HourlySeries.watts(Arrays.stream(array.values())
                        .map(watts -> Math.min(watts, most))
                        .toArray()),
                LoadHours.atBank(loads.essentials(loads.stated()), calendar),
                calendar);
    }

    private static void check(Validation checks, String field, HourlySeries series, HourCalendar calendar) {
        checks.that(
                        series.size() == calendar.hours(),
                        field,
                        ProblemCode.INCONSISTENT,
                        () -> "%s must have the year's %s hours, but has %s."
                                .formatted(field, calendar.hours(), series.size()))
                .that(
                        series.least() >= 0,
                        field,
                        ProblemCode.OUT_OF_RANGE,
                        () -> "%s must be at least 0 W in every hour, but was %s W.".formatted(field, series.least()));
    }
}
