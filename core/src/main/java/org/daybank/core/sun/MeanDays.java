package org.daybank.core.sun;

import java.time.Month;
import java.util.List;
import org.daybank.core.working.Table;

/** The day that stands for each month (Klein 1977). */
final class MeanDays {
    private static final List<Integer> DAY_OF_YEAR = Table.resource(MeanDays.class, "mean-days.csv").rows().stream()
            .map(row -> row.value(Integer.class, "dayOfYear"))
            .toList();

    private MeanDays() {}

    /** Its day of the year. */
    static int dayOfYear(Month month) {
        return DAY_OF_YEAR.get(month.getValue() - 1);
    }
}
