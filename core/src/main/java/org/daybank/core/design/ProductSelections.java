package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.inverter.InverterSelection;

/**
 * Every product of the catalogue, ranked or rejected for a system on a bank, and the voltages rejected.
 *
 * @param rejectedVoltages system nominal voltages below the selected one, each with the rules that no product passes there
 * @param modules with the selected controller
 * @param batteries for the loads
 * @param chargeControllers with the selected module and bank
 * @param inverters for the loads; empty when every load is DC
 */
public record ProductSelections(
        List<RejectedVoltage> rejectedVoltages,
        ModuleSelection modules,
        BankSelection batteries,
        ChargerSelection chargeControllers,
        Optional<InverterSelection> inverters) {
    /** Keeps a copy. */
    public ProductSelections {
        rejectedVoltages = List.copyOf(rejectedVoltages);
    }
}
