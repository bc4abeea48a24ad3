package org.daybank.core.array;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.Site;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.SunClass;

/**
 * What one module brings to the bank on the mean day of each month, before the battery's own loss.
 *
 * @param module the module
 * @param path how its energy reaches the bank
 * @param series modules in a string on the direct path, which share the bank's voltage; 1 on the tracking path
 * @param daily energy for each month, from January
 */
public record ModuleYield(PvModule module, ChargePath path, int series, List<Energy> daily) {
    /** Keeps a copy. */
    public ModuleYield {
        daily = List.copyOf(daily);
    }

    /**
     * Yield through a controller that tracks the best point: the largest power of the module at each irradiance and cell
     * temperature, times the factors and the controller's efficiency.
     *
     * @throws org.daybank.core.schema.InvalidInput when no circuit fits the data sheet
     */
    public static ModuleYield tracking(
            PvModule module, Site site, IrradianceDistribution sunshine, ArrayPolicy policy) {
        return tracking(ModuleOutput.of(module, policy.yieldModel()), site, sunshine, policy);
    }

    /** The same of a module whose output is known already. */
    public static ModuleYield tracking(
            ModuleOutput output, Site site, IrradianceDistribution sunshine, ArrayPolicy policy) {
        Ratio left = policy.whenAged().times(policy.chargerEfficiency());
        return new ModuleYield(output.module(), ChargePath.TRACKING, 1, daily(site, sunshine, output::bestWatts, left));
    }

    /**
     * Yield at the bank's own voltage: the current that the module drives at its share of it, at each irradiance and cell
     * temperature, times the factors. The charge counts at the bank's true nominal voltage.
     *
     * @param series modules in a string
     * @param trueNominal of the bank
     * @param charging voltage of the bank while the sun shines
     * @throws org.daybank.core.schema.InvalidInput when no circuit fits the data sheet
     */
    public static ModuleYield direct(
            PvModule module,
            int series,
            Voltage trueNominal,
            Voltage charging,
            Site site,
            IrradianceDistribution sunshine,
            ArrayPolicy policy) {
        return direct(
                ModuleOutput.of(module, policy.yieldModel()), series, trueNominal, charging, site, sunshine, policy);
    }

    /** The same of a module whose output is known already. */
    public static ModuleYield direct(
            ModuleOutput output,
            int series,
            Voltage trueNominal,
            Voltage charging,
            Site site,
            IrradianceDistribution sunshine,
            ArrayPolicy policy) {
        double nominalVolts = trueNominal.volts() / series;
        double chargingVolts = charging.volts() / series;
        return new ModuleYield(
                output.module(),
                ChargePath.DIRECT,
                series,
                daily(site, sunshine, sun -> nominalVolts * output.amperes(chargingVolts, sun), policy.whenAged()));
    }

    private static List<Energy> daily(
            Site site, IrradianceDistribution sunshine, ToDoubleFunction<SunClass> watts, Ratio left) {
        return Arrays.stream(Month.values())
                .map(month -> {
                    double wattHours = 0;
                    for (SunClass sun : sunshine.in(month)) {
                        wattHours += watts.applyAsDouble(sun) * sun.perDay().hours();
                    }
                    Ratio bare =
                            site.months().snowLoss().get(month.getValue() - 1).complement();
                    return Energy.wattHours(wattHours).times(left).times(bare);
                })
                .toList();
    }

    /** The yield of a month's mean day. */
    public Energy in(Month month) {
        return daily.get(month.getValue() - 1);
    }

    /** The yield of a year of 365 days. */
    public Energy yearly() {
        Energy sum = Energy.ZERO;
        for (Month month : Month.values()) {
            sum = sum.plus(in(month).times(month.length(false)));
        }
        return sum;
    }

    /** The same module through a controller of another efficiency. */
    public ModuleYield times(Ratio efficiency) {
        return new ModuleYield(
                module,
                path,
                series,
                daily.stream().map(energy -> energy.times(efficiency)).toList());
    }
}
