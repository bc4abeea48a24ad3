package org.daybank.core.grid;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Self-use, import and export, hour by hour, summed by month.
 *
 * <p>Loads and array are means of an hour: within it, a cloud or a kettle makes import and export that cancel here, so that
 * self-use comes out rather too large.
 *
 * @param years how many
 * @param yearly flows of a mean year
 * @param selfUseShare share of what the array gave in a year that was used at once
 * @param loadCovered share of the loads' energy of a year that the array gave directly
 * @param months one after the other
 */
public record GridFlows(int years, EnergyFlows yearly, Ratio selfUseShare, Ratio loadCovered, List<FlowMonth> months) {
    /** Keeps a copy. */
    public GridFlows {
        months = List.copyOf(months);
    }

    /**
     * The flows of years that follow each other.
     *
     * @param years at least one
     * @param inverterPower most that the inverters give; no limit when absent
     * @param exportLimit most that the grid takes; no limit when absent
     * @throws org.daybank.core.schema.InvalidInput when there is no year
     */
    public static GridFlows of(List<GridHours> years, @Nullable Power inverterPower, @Nullable Power exportLimit) {
        new Validation().notEmpty("years", years).done();
        List<FlowMonth> months = new ArrayList<>();
        EnergyFlows sum = EnergyFlows.NONE;
        for (int year = 0; year < years.size(); year++) {
            for (Month month : Month.values()) {
                EnergyFlows flows = month(years.get(year), month, watts(inverterPower), watts(exportLimit));
                months.add(new FlowMonth(year, month, flows));
                sum = sum.plus(flows);
            }
        }
        EnergyFlows yearly = sum.dividedBy(years.size());
        return new GridFlows(years.size(), yearly, yearly.selfUseShare(), yearly.loadCovered(), months);
    }

    /** The flows of one year. */
    public static GridFlows of(GridHours hours, @Nullable Power inverterPower, @Nullable Power exportLimit) {
        return of(List.of(hours), inverterPower, exportLimit);
    }

    private static double watts(@Nullable Power limit) {
        return limit == null ? Double.POSITIVE_INFINITY : limit.watts();
    }

    private static EnergyFlows month(GridHours hours, Month month, double inverterWatts, double exportWatts) {
        double loads = 0;
        double offered = 0;
        double used = 0;
        double out = 0;
        int end = hours.calendar().endHour(month);
        for (int hour = hours.calendar().firstHour(month); hour < end; hour++) {
            double load = hours.load().at(hour);
            double array = hours.array().at(hour);
            double given = Math.min(array, inverterWatts);
            double self = Math.min(given, load);
            loads += load;
            offered += array;
            used += self;
            out += Math.min(given - self, exportWatts);
        }
        return new EnergyFlows(
                Energy.wattHours(loads),
                Energy.wattHours(offered),
                Energy.wattHours(used),
                Energy.wattHours(Math.max(0, loads - used)),
                Energy.wattHours(out),
                Energy.wattHours(Math.max(0, offered - used - out)));
    }

    /** What can hurt someone where an array feeds a service. */
    public List<Hazard> hazards() {
        return List.of(Hazard.of(HazardCode.BACKFEED, "inverter to grid"));
    }

    /** The sums of a mean year, as one would write them on paper. */
    public Working working() {
        return Working.builder()
                .step(
                        "import",
                        "E_in = Σ max(0; load − array)",
                        "every hour by itself",
                        yearly.imported(),
                        "%s − %s",
                        yearly.load(),
                        yearly.selfUse())
                .step(
                        "export",
                        "E_out = array − self-use − clipped",
                        "every hour by itself",
                        yearly.exported(),
                        "%s − %s − %s",
                        yearly.array(),
                        yearly.selfUse(),
                        yearly.clipped())
                .build();
    }
}
