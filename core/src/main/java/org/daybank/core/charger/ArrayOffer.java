package org.daybank.core.charger;

import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.sun.IrradianceDistribution;

/**
 * The modules that a controller is to carry.
 *
 * @param extremes of the module at the site
 * @param exactTracking modules that would just do where the best point is tracked without loss
 * @param modulesDirect modules needed at the bank's own voltage
 * @param whenNew what dirt, mismatch and wiring leave of a new array's power
 * @param sunshine the year's sunshine on the array
 */
public record ArrayOffer(
        ModuleExtremes extremes,
        Ratio exactTracking,
        int modulesDirect,
        Ratio whenNew,
        IrradianceDistribution sunshine) {
    /** The module. */
    public PvModule module() {
        return extremes.module();
    }

    /** What the modules cost at the least, whichever controller: in minor units of their currency. */
    public long leastPriceMinorUnits() {
        long least = Math.min(modulesDirect, (long) Math.ceil(exactTracking.fraction() - 1e-9));
        return module().price().minorUnits() * least;
    }

    /** Modules needed through a controller. */
    int modulesFor(ChargeController controller) {
        return switch (controller.kind().path()) {
            case TRACKING ->
                (int) Math.min(
                        ArraySize.MOST_MODULES,
                        Math.ceil(exactTracking.fraction()
                                        / controller.efficiency().fraction()
                                - 1e-9));
            case DIRECT -> modulesDirect;
        };
    }
}
