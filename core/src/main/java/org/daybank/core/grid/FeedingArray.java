package org.daybank.core.grid;

import java.time.Month;
import java.util.List;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.PvModule;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/**
 * An array that feeds the service of a house through grid inverters.
 *
 * @param module what it is made of
 * @param modules how many
 * @param inverterPower continuous AC power of all inverters together
 * @param inverterEfficiency of the inverters, weighted over a year
 */
public record FeedingArray(
        PvModule module,
        @Bounds(minimum = "1", maximum = "10000") int modules,

        @Bounds(exclusiveMinimum = "0 W", maximum = "100000 kW")
        Power inverterPower,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.95–0.98")
        @Assumed(value = "0.97", source = "typical data sheets, weighted")
        Ratio inverterEfficiency) {
    /**
     * Validates the array.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public FeedingArray {
        inverterEfficiency = Defaults.otherwise(inverterEfficiency, FeedingArray.class, "inverterEfficiency");
        Validation.of(FeedingArray.class, module, modules, inverterPower, inverterEfficiency)
                .done();
    }

    /**
     * Its hours beside those of loads, year after year: dirt, mismatch, wiring, age and snow reckoned in.
     *
     * @param snowLoss share of the yield that is lost under snow, twelve from January
     * @throws org.daybank.core.schema.InvalidInput when no circuit fits the module's data sheet
     */
    public List<GridHours> beside(LoadProfile loads, SunnyYears sun, List<Ratio> snowLoss, ArrayPolicy policy) {
        new Validation().length("snowLoss", snowLoss, 12).done();
        ModuleOutput output = ModuleOutput.of(module, policy.yieldModel());
        return sun.years().stream()
                .map(year -> {
                    HourCalendar calendar = year.sun().calendar();
                    HourlySeries best = output.best(year.sun(), year.air());
                    return new GridHours(
                            offered(best, calendar, snowLoss, policy),
                            LoadHours.atLoads(loads.everything(loads.stated()), calendar),
                            calendar);
                })
                .toList();
    }

    private HourlySeries offered(HourlySeries best, HourCalendar calendar, List<Ratio> snowLoss, ArrayPolicy policy) {
        double[] watts = best.values();
        for (Month month : Month.values()) {
            double factor = policy.whenAged()
                            .times(snowLoss.get(month.getValue() - 1).complement())
                            .times(inverterEfficiency)
                            .fraction()
                    * modules;
            for (int hour = calendar.firstHour(month); hour < calendar.endHour(month); hour++) {
                watts[hour] *= factor;
            }
        }
        return HourlySeries.watts(watts);
    }
}
