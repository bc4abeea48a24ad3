package org.daybank.core.charger;

import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.quantity.Voltage;

/** How many modules in series a controller works with. */
record StringLengths(ChargerNeed need, ModuleExtremes extremes, ChargeController controller, ChargerPolicy policy) {
    private boolean direct() {
        return controller.kind().path() == ChargePath.DIRECT;
    }

    /** The lowest voltage in the hottest sun at which the controller charges the bank. */
    Voltage operatingLimit() {
        return need.resolved().chargingVoltage().plus(controller.headroom());
    }

    /** The shortest string that works in the hottest sun; on the direct path the one of the module's voltage group. */
    int minimum() {
        Voltage group = extremes.module().nominalGroup();
        if (direct() && group != null) {
            return (int) Math.max(1, Math.rint(need.nominalVoltage().dividedBy(group)));
        }
        Voltage least = controller.kind() == ControllerKind.STEP_UP_MPPT
                        || controller.minimumInputVoltage().compareTo(operatingLimit()) > 0
                ? controller.minimumInputVoltage()
                : operatingLimit();
        return (int) Math.max(1, Math.ceil(least.dividedBy(extremes.hottestMaximumPower()) - 1e-12));
    }

    /** The longest string that neither the controller nor the module's insulation refuses on the coldest morning. */
    int maximum() {
        if (direct()) {
            return minimum();
        }
        Voltage input = ChargerRules.inputLimit(controller, policy);
        Voltage system = extremes.module().systemVoltage();
        Voltage limit = input.compareTo(system) < 0 ? input : system;
        return (int) Math.floor(limit.dividedBy(extremes.coldestOpenCircuit()) + 1e-12);
    }
}
