package org.daybank.core.design;

import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Voltage;

/**
 * Another complete design that differs in something a customer cares about.
 *
 * @param nominalVoltage what its bus is called
 * @param chemistry of its bank
 * @param controllerKind how it charges
 * @param bill its parts
 * @param dearerBy what it costs more than the design chosen
 */
public record Alternative(
        Voltage nominalVoltage,
        Chemistry chemistry,
        ControllerKind controllerKind,
        BillOfMaterials bill,
        Money dearerBy) {}
