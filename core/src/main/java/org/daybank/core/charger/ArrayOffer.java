package org.daybank.core.charger;

import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.sun.IrradianceDistribution;

/**
 * The modules that a controller is to carry.
 *
 * @param extremes of the module at the site
 * @param modulesTracking modules needed where the best point is tracked
 * @param modulesDirect modules needed at the bank's own voltage
 * @param whenNew what dirt, mismatch and wiring leave of a new array's power
 * @param sunshine the year's sunshine on the array
 */
public record ArrayOffer(
        ModuleExtremes extremes,
        int modulesTracking,
        int modulesDirect,
        Ratio whenNew,
        IrradianceDistribution sunshine) {
    /** The module. */
    public PvModule module() {
        return extremes.module();
    }

    /** Modules needed through a controller of a kind. */
    int modulesFor(ControllerKind kind) {
        return switch (kind.path()) {
            case TRACKING -> modulesTracking;
            case DIRECT -> modulesDirect;
        };
    }
}
