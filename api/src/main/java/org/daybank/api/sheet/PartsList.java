package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.design.Alternative;
import org.daybank.core.design.AutonomyPoint;
import org.daybank.core.design.BillLine;
import org.daybank.core.design.BillOfMaterials;
import org.daybank.core.design.FrontierPoint;
import org.daybank.core.design.SystemDesign;

/** Parts and prices, and what else there was to choose from. */
final class PartsList {
    private PartsList() {}

    static Html of(SystemDesign design) {
        Html html = new Html();
        BillOfMaterials bill = design.billOfMaterials();
        if (bill == null) {
            return html;
        }
        List<List<String>> rows = new ArrayList<>();
        for (BillLine line : bill.lines()) {
            rows.add(List.of(
                    Words.apart(line.part()),
                    line.product(),
                    String.valueOf(line.count()),
                    line.unitPrice().toString(),
                    line.price().toString()));
        }
        rows.add(List.of("total", "", "", "", bill.total().toString()));
        html.table("Parts", List.of("Part", "Model", "Count", "Price of one", "Price"), rows);
        html.element("p", "Cable, protection, mounting and work are not in this list.");
        if (!design.alternatives().isEmpty()) {
            html.table(
                    "Other complete designs",
                    List.of("Bus", "Chemistry", "Controller", "Parts", "Price", "Dearer by"),
                    design.alternatives().stream().map(PartsList::row).toList());
        }
        if (!design.autonomyPrices().isEmpty()) {
            html.table(
                    "What autonomy costs",
                    List.of("Autonomy", "Price", "Batteries", "Modules"),
                    design.autonomyPrices().stream().map(PartsList::row).toList());
        }
        if (!design.frontier().isEmpty()) {
            html.table(
                    "What availability costs",
                    List.of("Price", "Availability", "Array to load", "Autonomy", "Bus", "Modules", "Batteries"),
                    design.frontier().stream().map(PartsList::row).toList());
        }
        return html;
    }

    private static List<String> row(Alternative other) {
        List<String> parts = other.bill().lines().stream()
                .map(line -> line.count() + " × " + line.product())
                .toList();
        return List.of(
                Words.of(other.nominalVoltage()),
                Words.of(other.chemistry()),
                Words.of(other.controllerKind()),
                "with " + String.join(", ", parts),
                other.bill().total().toString(),
                other.dearerBy().toString());
    }

    private static List<String> row(AutonomyPoint point) {
        return List.of(
                Words.of(point.autonomy()),
                point.price().toString(),
                "%s × %s".formatted(point.batteries(), point.battery()),
                String.valueOf(point.modules()));
    }

    private static List<String> row(FrontierPoint point) {
        return List.of(
                point.price().toString(),
                Words.percent(point.availability()),
                Words.times(point.arrayToLoadRatio()),
                Words.of(point.autonomy()),
                Words.of(point.nominalVoltage()),
                String.valueOf(point.modules()),
                String.valueOf(point.batteries()));
    }
}
