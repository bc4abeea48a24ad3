package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.wiring.WiringPlan;

/**
 * The selected parts of a system on a bank.
 *
 * @param nominalVoltage system nominal voltage: 12, 24 or 48 V
 * @param bank the batteries
 * @param array modules and strings
 * @param moduleExtremes lowest and highest voltages of one module
 * @param chargeController the charge controllers
 * @param inverter the inverters; empty when every load is DC
 * @param chargeSettings set-points of the charge controllers
 * @param ventilation of the bank; empty for lithium
 * @param generator for the hours in which sun and bank do not supply every load; empty when there are none, or none were
 *     simulated
 * @param wiring every circuit: conductors, protective devices, disconnects
 * @param billOfMaterials parts and prices
 * @param parts the parts by their model codes, as a simulation of the system takes them
 */
@RecordBuilder
public record BatterySystem(
        Voltage nominalVoltage,
        BankFit bank,
        ArrayLayout array,
        ModuleExtremes moduleExtremes,
        ChargerFit chargeController,
        Optional<InverterFit> inverter,
        ChargeSettings chargeSettings,
        Optional<Ventilation> ventilation,
        Optional<EngineBackup> generator,
        WiringPlan wiring,
        BillOfMaterials billOfMaterials,
        SystemParts parts)
        implements BatterySystemBuilder.With {
    /** Returns the layout of the bank. */
    public BankLayout bankLayout() {
        return Objects.requireNonNull(bank.layout());
    }
}
