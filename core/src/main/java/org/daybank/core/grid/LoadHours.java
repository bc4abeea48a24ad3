package org.daybank.core.grid;

import java.time.Month;
import org.daybank.core.load.kernel.DemandTable;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/** Loads known by the hours of each month's mean day, laid out over the hours of a year. */
public final class LoadHours {
    private static final int HOURS_OF_A_DAY = 24;

    private LoadHours() {}

    /** What the loads themselves get; in W. */
    public static HourlySeries atLoads(DemandTable table, HourCalendar calendar) {
        return spread(table.atLoads, calendar);
    }

    /** What leaves a bank for them; in W. */
    public static HourlySeries atBank(DemandTable table, HourCalendar calendar) {
        return spread(table.atBank, calendar);
    }

    private static HourlySeries spread(double[][] meanDays, HourCalendar calendar) {
        double[] watts = new double[calendar.hours()];
        for (Month month : Month.values()) {
            double[] day = meanDays[month.getValue() - 1];
            for (int hour = calendar.firstHour(month); hour < calendar.endHour(month); hour++) {
                watts[hour] = day[hour % HOURS_OF_A_DAY];
            }
        }
        return HourlySeries.watts(watts);
    }
}
