package org.daybank.core.grid;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/** Years in which every day is like the other. */
final class Days {
    /** 2023 has 365 days. */
    static final HourCalendar CALENDAR = new HourCalendar(2023, HourCalendar.COMMON);

    private Days() {}

    /** Power in W by hour of the day. */
    static HourlySeries alike(IntToDoubleFunction wattsByHourOfDay) {
        return HourlySeries.watts(IntStream.range(0, CALENDAR.hours())
                .mapToDouble(hour -> wattsByHourOfDay.applyAsDouble(hour % 24))
                .toArray());
    }

    static GridHours year(IntToDoubleFunction array, IntToDoubleFunction load) {
        return new GridHours(alike(array), alike(load), CALENDAR);
    }
}
