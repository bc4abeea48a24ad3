package org.daybank.core.array;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.Site;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.sun.SunMonth;

/**
 * What one module brings to the bank on the mean day of each month, before the battery's own loss.
 *
 * @param module the module
 * @param path how its energy reaches the bank
 * @param series modules in a string on the direct path, which share the bank's voltage; 1 on the tracking path
 * @param daily energy for each month, from January
 */
public record ModuleYield(PvModule module, ChargePath path, int series, List<Energy> daily) {
    /**
     * Irradiance-weighted mean irradiance over the plain mean, of a day shaped like a half sine: {@code π²/8}. It is what
     * the cells are heated by while most of the energy comes in.
     */
    private static final double WEIGHTED_OVER_MEAN = Math.PI * Math.PI / 8;

    /** Keeps a copy. */
    public ModuleYield {
        daily = List.copyOf(daily);
    }

    /**
     * Yield through a controller that tracks the best point: {@code P · H / (1 kW/m²) · (1 + γ · (T_cell − 25 °C)) · factors ·
     * efficiency}.
     */
    public static ModuleYield tracking(PvModule module, Site site, MonthlySun sun, ArrayPolicy policy) {
        List<Energy> daily = new ArrayList<>();
        for (SunMonth month : sun.months()) {
            double factors = policy.whenAged().fraction()
                    * policy.chargerEfficiency().fraction()
                    * snowLeft(site, month)
                    * ModuleExtremes.powerAt(module, cell(module, site, month, policy))
                            .fraction();
            daily.add(module.power().times(month.planeOfArray().peakSunHours()).times(factors));
        }
        return new ModuleYield(module, ChargePath.TRACKING, 1, daily);
    }

    /**
     * Yield at the bank's own voltage: the module's current flows whatever its voltage, so {@code I_mp · H / (1 kW/m²) ·
     * factors} of charge reach the bank for each string, at the bank's true nominal voltage.
     *
     * @param series modules in a string
     */
    public static ModuleYield direct(
            PvModule module, int series, Voltage bank, Site site, MonthlySun sun, ArrayPolicy policy) {
        List<Energy> daily = new ArrayList<>();
        for (SunMonth month : sun.months()) {
            double factors = policy.whenAged().fraction() * snowLeft(site, month);
            daily.add(module.maximumPowerCurrent()
                    .times(month.planeOfArray().peakSunHours())
                    .times(bank)
                    .times(factors)
                    .dividedBy(series));
        }
        return new ModuleYield(module, ChargePath.DIRECT, series, daily);
    }

    private static double snowLeft(Site site, SunMonth month) {
        return site.months()
                .snowLoss()
                .get(month.month().getValue() - 1)
                .complement()
                .fraction();
    }

    private static Temperature cell(PvModule module, Site site, SunMonth month, ArrayPolicy policy) {
        Temperature air =
                site.months().meanAir().get(month.month().getValue() - 1).plus(policy.daytimeOverMeanAir());
        double hours = month.dayLength().hours();
        TemperatureDifference rise = hours == 0
                ? TemperatureDifference.ZERO
                : ModuleExtremes.rise(
                        module, month.planeOfArray().wattHoursPerSquareMetre() / hours * WEIGHTED_OVER_MEAN);
        return air.plus(rise);
    }

    /** The yield of a month's mean day. */
    public Energy in(Month month) {
        return daily.get(month.getValue() - 1);
    }
}
