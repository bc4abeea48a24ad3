package org.daybank.core.design;

import java.util.List;
import java.util.Objects;
import org.daybank.core.array.PvModule;
import org.daybank.core.inverter.GridArray;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.jspecify.annotations.Nullable;

/**
 * One module with one inverter of either kind, and as many modules as bring what is wished through it.
 *
 * @param array the modules
 * @param string how a string inverter fits; absent for a microinverter
 * @param micro how a microinverter fits; absent for a string inverter
 */
record GridOption(
        GridArray array,
        @Nullable StringInverterFit string,
        @Nullable MicroinverterFit micro) {
    PvModule module() {
        return array.module();
    }

    boolean inStrings() {
        return string != null;
    }

    boolean fits() {
        return string != null ? string.fits() : units().fits();
    }

    String product() {
        return string != null ? string.product() : units().product();
    }

    Rejection rejection() {
        return string != null ? string.rejection() : units().rejection();
    }

    GridInverter inverter() {
        return string != null ? string.inverter() : units().inverter();
    }

    int count() {
        return string != null ? string.count() : units().count();
    }

    List<Check> checks() {
        return string != null ? string.checks() : units().checks();
    }

    /** Of modules and inverters. */
    Money price() {
        Money inverters = string != null ? string.price() : units().price();
        return inverters.plus(module().price().times(array.modules()));
    }

    /** What efficiency and clipping leave of the modules' energy. */
    double left() {
        return string != null
                ? left(string.inverter().efficiency(), string.clipping())
                : left(units().inverter().efficiency(), units().clipping());
    }

    private static double left(Ratio efficiency, Ratio clipping) {
        return efficiency.times(clipping.complement()).fraction();
    }

    private MicroinverterFit units() {
        return Objects.requireNonNull(micro);
    }
}
