package org.daybank.core.array;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;

/**
 * The same module at its best point and at the bank's own voltage: what tracking gains, and what a module of the wrong voltage
 * group throws away without it.
 *
 * @param series modules in a string at the bank's own voltage
 * @param months one for each month, from January
 * @param yearlyGain energy of a year at the best point over that at the bank's voltage, less one
 */
public record PathComparison(int series, List<MonthlyGain> months, Ratio yearlyGain) {
    /** Keeps a copy. */
    public PathComparison {
        months = List.copyOf(months);
    }

    /**
     * The two yields of a month's mean day.
     *
     * @param month which
     * @param tracking at the best point
     * @param direct at the bank's own voltage
     * @param gain tracking over direct, less one; zero when there is no sun
     */
    public record MonthlyGain(Month month, Energy tracking, Energy direct, Ratio gain) {}

    /** Holds the yields of the two paths beside each other. */
    public static PathComparison of(ModuleYield tracking, ModuleYield direct) {
        List<MonthlyGain> months = Arrays.stream(Month.values())
                .map(month -> new MonthlyGain(
                        month, tracking.in(month), direct.in(month), gain(tracking.in(month), direct.in(month))))
                .toList();
        return new PathComparison(direct.series(), months, gain(tracking.yearly(), direct.yearly()));
    }

    private static Ratio gain(Energy tracking, Energy direct) {
        return direct.wattHours() == 0 ? Ratio.ZERO : Ratio.of(tracking.dividedBy(direct) - 1);
    }
}
