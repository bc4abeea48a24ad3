package org.daybank.core.design;

import java.util.Optional;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.Power;
import org.daybank.core.wiring.WiringPlan;

/**
 * The selected parts of an array that feeds the grid.
 *
 * @param module model of the modules
 * @param modules number of modules
 * @param arrayPower power of all modules at standard test conditions
 * @param moduleExtremes lowest and highest voltages of one module
 * @param stringInverters the selected string inverters; empty when microinverters are cheaper
 * @param microinverters the selected microinverters; empty when string inverters are cheaper
 * @param wiring every circuit: conductors, protective devices, disconnects
 * @param billOfMaterials parts and prices
 */
public record GridSystem(
        String module,
        int modules,
        Power arrayPower,
        ModuleExtremes moduleExtremes,
        Optional<StringInverterFit> stringInverters,
        Optional<MicroinverterFit> microinverters,
        WiringPlan wiring,
        BillOfMaterials billOfMaterials) {}
