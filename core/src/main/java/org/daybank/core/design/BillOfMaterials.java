package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.design.search.GridCandidate;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.quantity.Money;

/**
 * The bill of materials. Cables, protective devices, mounting and labour are not in it.
 *
 * @param lines one for each product
 * @param total of all lines
 */
public record BillOfMaterials(List<BillLine> lines, Money total) {
    /** Keeps a copy. */
    public BillOfMaterials {
        lines = List.copyOf(lines);
    }

    static BillOfMaterials of(List<BillLine> lines) {
        return new BillOfMaterials(
                lines, lines.stream().map(BillLine::price).reduce(Money::plus).orElseThrow());
    }

    /** The modules, charge controllers, batteries and inverters of a system. */
    static BillOfMaterials of(CandidateSystem system) {
        ChargerFit charger = system.charger();
        BankLayout bank = system.layout();
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
                "battery", bank.product(), bank.count(), bank.battery().price()));
        InverterFit inverter = system.inverter();
        if (inverter != null) {
            lines.add(BillLine.of(
                    "inverter",
                    inverter.product(),
                    inverter.count(),
                    inverter.inverter().price()));
        }
        return of(lines);
    }

    /** The modules and inverters of a pair that feeds the grid. */
    static BillOfMaterials of(GridCandidate pair) {
        return of(List.of(
                BillLine.of(
                        "module",
                        pair.module().model(),
                        pair.array().modules(),
                        pair.module().price()),
                BillLine.of(
                        pair.inStrings() ? "stringInverter" : "microinverter",
                        pair.product(),
                        pair.count(),
                        pair.inverter().price())));
    }
}
