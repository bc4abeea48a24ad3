package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.InverterSelection;

/**
 * The products of the catalogue as far as they were evaluated for a brief without a design: on a bank at the voltage and with
 * the chemistry that come nearest, for the grid with the pair that comes nearest.
 *
 * @param rejectedVoltages every system nominal voltage with the rules that no product passes there; empty for an array that
 *     feeds the grid
 * @param modules ranked and rejected; empty where no controller or inverter was evaluated
 * @param batteries ranked and rejected; empty for an array that feeds the grid
 * @param chargeControllers ranked and rejected; empty for an array that feeds the grid
 * @param inverters ranked and rejected; empty when every load is DC and for an array that feeds the grid
 * @param gridInverters ranked and rejected; empty for a system on a bank and for a catalogue without modules
 */
public record EvaluatedProducts(
        List<RejectedVoltage> rejectedVoltages,
        Optional<ModuleSelection> modules,
        Optional<BankSelection> batteries,
        Optional<ChargerSelection> chargeControllers,
        Optional<InverterSelection> inverters,
        Optional<GridInverterSelection> gridInverters) {
    /** Keeps a copy. */
    public EvaluatedProducts {
        rejectedVoltages = List.copyOf(rejectedVoltages);
    }
}
