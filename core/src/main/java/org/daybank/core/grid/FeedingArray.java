package org.daybank.core.grid;

import java.time.Month;
import java.util.List;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.PvModule;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

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
        int modules,
        Power inverterPower,

        @Assumed(
                value = "0.97",
                least = "0.5",
                most = "1",
                sensible = "0.95–0.98",
                source = "typical data sheets, weighted")
        Ratio inverterEfficiency) {
    /** Most modules of one array. */
    public static final int MOST_MODULES = 10_000;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or out of range
     */
    public FeedingArray {
        inverterEfficiency = Policies.otherwise(inverterEfficiency, FeedingArray.class, "inverterEfficiency");
        new Validation()
                .required("module", module)
                .within("modules", modules, 1, MOST_MODULES)
                .required("inverterPower", inverterPower)
                .above("inverterPower", inverterPower, Power.ZERO)
                .done();
        Policies.check(FeedingArray.class, module, modules, inverterPower, inverterEfficiency);
    }

    /**
     * Its hours beside those of loads, year after year: dirt, mismatch, wiring, age and snow reckoned in.
     *
     * @param snowLoss share of the yield that is lost under snow, twelve from January
     * @throws org.daybank.core.working.InvalidInput when no circuit fits the module's data sheet
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
