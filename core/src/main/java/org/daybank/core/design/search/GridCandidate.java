package org.daybank.core.design.search;

import java.util.List;
import java.util.Objects;
import org.daybank.core.array.PvModule;
import org.daybank.core.inverter.GridArray;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.jspecify.annotations.Nullable;

/**
 * One module with one inverter of either kind, in the number of modules that yields the required energy.
 *
 * @param array the modules
 * @param string evaluation of a string inverter; absent for a microinverter
 * @param micro evaluation of a microinverter; absent for a string inverter
 */
public record GridCandidate(
        GridArray array,
        @Nullable StringInverterFit string,
        @Nullable MicroinverterFit micro) {
    /** Returns the module. */
    public PvModule module() {
        return array.module();
    }

    /** Returns whether the inverter is a string inverter. */
    public boolean inStrings() {
        return string != null;
    }

    boolean fits() {
        return string != null ? string.fits() : units().fits();
    }

    /** Returns the model of the inverter. */
    public String product() {
        return string != null ? string.product() : units().product();
    }

    /** Returns the rules that the pair fails. */
    public Rejection rejection() {
        return string != null ? string.rejection() : units().rejection();
    }

    /** Returns the inverter. */
    public GridInverter inverter() {
        return string != null ? string.inverter() : units().inverter();
    }

    /** Returns the number of inverters. */
    public int count() {
        return string != null ? string.count() : units().count();
    }

    /** Returns the power of all inverters. */
    public Power power() {
        return string != null ? string.power() : units().power();
    }

    /** Returns every rule. */
    public List<Check> checks() {
        return string != null ? string.checks() : units().checks();
    }

    /** Returns the price of modules and inverters. */
    public Money price() {
        Money inverters = string != null ? string.price() : units().price();
        return inverters.plus(module().price().times(array.modules()));
    }

    /** The share of the modules' energy that efficiency and clipping leave. */
    double energyShare() {
        return string != null
                ? energyShare(string.inverter().efficiency(), string.clipping())
                : energyShare(units().inverter().efficiency(), units().clipping());
    }

    private static double energyShare(Ratio efficiency, Ratio clipping) {
        return efficiency.times(clipping.complement()).fraction();
    }

    private MicroinverterFit units() {
        return Objects.requireNonNull(micro);
    }
}
