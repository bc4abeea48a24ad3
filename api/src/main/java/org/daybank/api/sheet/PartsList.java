package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.design.Alternative;
import org.daybank.core.design.AutonomyPoint;
import org.daybank.core.design.BackupDesign;
import org.daybank.core.design.BillLine;
import org.daybank.core.design.BillOfMaterials;
import org.daybank.core.design.DesignAlternatives;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.FrontierPoint;
import org.daybank.core.design.StandAloneDesign;

/** Parts and prices, and what else there was to choose from. */
final class PartsList {
    private PartsList() {}

    static Html of(DesignOutcome design) {
        Html html = new Html();
        BillOfMaterials bill = design.billOfMaterials().orElse(null);
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
        if (design instanceof StandAloneDesign standAlone) {
            alternatives(html, standAlone.alternatives());
        } else if (design instanceof BackupDesign backup) {
            alternatives(html, backup.alternatives());
        }
        return html;
    }

    private static void alternatives(Html html, DesignAlternatives alternatives) {
        if (!alternatives.designs().isEmpty()) {
            html.table(
                    "Other complete designs",
                    List.of("Bus", "Chemistry", "Controller", "Parts", "Price", "Dearer by"),
                    alternatives.designs().stream().map(PartsList::row).toList());
        }
        if (!alternatives.autonomyPrices().isEmpty()) {
            html.table(
                    "What autonomy costs",
                    List.of("Autonomy", "Price", "Batteries", "Modules"),
                    alternatives.autonomyPrices().stream().map(PartsList::row).toList());
        }
        if (!alternatives.availabilityFrontier().isEmpty()) {
            html.table(
                    "What availability costs",
                    List.of("Price", "Availability", "Array to load", "Autonomy", "Bus", "Modules", "Batteries"),
                    alternatives.availabilityFrontier().stream()
                            .map(PartsList::row)
                            .toList());
        }
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
