package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.array.ArraySize;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * Parts that make a complete system.
 *
 * @param nominalVoltage of its bus
 * @param budget with what its controllers draw
 * @param controllerDraw what the budget counts for the controllers, no less than they draw
 * @param inverter absent when every load is DC
 * @param bank how its battery fits
 * @param layout of its bank
 * @param size of its array
 * @param charger how its controller and module fit
 */
record Candidate(
        Voltage nominalVoltage,
        EnergyBudget budget,
        Power controllerDraw,
        @Nullable InverterFit inverter,
        BankFit bank,
        BankLayout layout,
        ArraySize size,
        ChargerFit charger) {

    /** Whether it charges through a shunt controller, which is never recommended over another. */
    boolean shunt() {
        return charger.controller().kind() == ControllerKind.SHUNT;
    }

    /** The price of the three or four kinds of part. */
    Money price() {
        Money parts = layout.price().plus(charger.priceWithArray());
        return inverter == null ? parts : parts.plus(inverter.price());
    }

    BillOfMaterials bill() {
        List<BillLine> lines = new ArrayList<>();
        lines.add(BillLine.of(
                "module",
                charger.array().product(),
                charger.array().modules(),
                charger.array().module().price()));
        lines.add(BillLine.of(
                "chargeController",
                charger.product(),
                charger.count(),
                charger.controller().price()));
        lines.add(BillLine.of(
                "battery", layout.product(), layout.count(), layout.battery().price()));
        if (inverter != null) {
            lines.add(BillLine.of(
                    "inverter",
                    inverter.product(),
                    inverter.count(),
                    inverter.inverter().price()));
        }
        return BillOfMaterials.of(lines);
    }
}
