package org.daybank.core.opinion;

import static org.daybank.core.design.Designs.grid;
import static org.daybank.core.design.Designs.system;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.design.BillLine;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.Designs;
import org.daybank.core.design.GridDesign;
import org.daybank.core.load.Load;

/**
 * Looks over a complete design as a colleague would before it goes out: takes its parts, the data sheets and the brief, and
 * holds them against every rule of its kind anew.
 */
final class Inspection {
    /** Every rule that the design breaks; none when it may go out. */
    static List<String> of(DesignOutcome design, Catalog catalog) {
        Faults faults = new Faults();
        DesignBrief brief = design.brief();
        switch (Plain.camel(brief.kind())) {
            case "gridInteractive" -> grid(design, catalog, faults);
            case "gridBackup" ->
                bank(
                        design,
                        brief.withLoads(
                                brief.loads().stream().filter(Load::essential).toList()),
                        catalog,
                        faults);
            default -> bank(design, brief, catalog, faults);
        }
        bill(design, faults);
        return faults.found();
    }

    private static void bank(DesignOutcome design, DesignBrief brief, Catalog catalog, Faults faults) {
        Ask ask = Plain.ask(brief, design.sun().plane());
        SecondOpinion.Offer offer = Plain.offer(catalog);
        var parts = system(design).parts();
        String inverter = parts.inverter();
        var array = system(design).array();
        faults.equal(
                "strings shared",
                array.stringsOnEach().stream().mapToInt(Integer::intValue).sum(),
                parts.strings());
        faults.equal("controllers sharing", array.stringsOnEach().size(), parts.controllers());
        BankInspection.of(
                ask,
                new BankInspection.Parts(
                        parts.nominalVoltage().volts(),
                        inverter == null
                                ? null
                                : named(
                                        catalog.inverters().stream()
                                                .map(Plain::inverter)
                                                .toList(),
                                        inverter,
                                        Goods.Inverter::model),
                        parts.inverters(),
                        named(offer.batteries(), parts.battery(), Goods.Battery::model),
                        parts.parallel(),
                        named(offer.modules(), parts.module(), Goods.Module::model),
                        parts.series(),
                        named(offer.controllers(), parts.controller(), Goods.Controller::model),
                        array.stringsOnEach(),
                        array.stringFuses()),
                faults);
    }

    private static void grid(DesignOutcome design, Catalog catalog, Faults faults) {
        Ask ask = Plain.ask(design.brief(), design.sun().plane());
        GridDesign feed = Designs.grid(design);
        Goods.Module module =
                named(Plain.offer(catalog).modules(), feed.system().module(), Goods.Module::model);
        var strings = feed.system().stringInverters().orElse(null);
        var units = feed.system().microinverters().orElse(null);
        faults.that("one kind of inverter", (strings == null) != (units == null));
        GridInspection inspection;
        if (strings != null) {
            Goods.GridInverter inverter = named(
                    catalog.stringInverters().stream().map(PlainGrid::inverter).toList(),
                    strings.product(),
                    Goods.GridInverter::model);
            inspection = new GridInspection(ask, module, feed.system().modules(), inverter, strings.count(), faults);
            List<List<GridInspection.Strings>> all = new ArrayList<>();
            strings.units()
                    .forEach(alike -> all.add(alike.trackers().stream()
                            .map(on ->
                                    new GridInspection.Strings(alike.units(), on.trackers(), on.strings(), on.series()))
                            .toList()));
            inspection.strings(all);
        } else {
            Goods.GridInverter inverter = named(
                    catalog.microinverters().stream().map(PlainGrid::inverter).toList(),
                    units.product(),
                    Goods.GridInverter::model);
            inspection = new GridInspection(ask, module, feed.system().modules(), inverter, units.count(), faults);
            inspection.units(units.branches(), units.branchCurrent().amperes());
        }
        inspection.brings(
                feed.energy().yearlyYield().wattHours(),
                feed.energy().yearlyUse().wattHours());
    }

    /** Money adds up, in cents, over parts that are counted as they are laid out. */
    private static void bill(DesignOutcome design, Faults faults) {
        var bill = design.billOfMaterials().orElseThrow();
        long cents = 0;
        for (BillLine line : bill.lines()) {
            cents += line.unitPrice().minorUnits() * line.count();
            faults.equal("count of " + line.part(), line.count(), laidOut(design, line.part()));
        }
        faults.equal("price", (double) bill.total().minorUnits(), (double) cents);
    }

    private static int laidOut(DesignOutcome design, String part) {
        var feed = design instanceof GridDesign grid ? grid.system() : null;
        var parts = design.batterySystem().map(BatterySystem::parts).orElse(null);
        return switch (part) {
            case "module" -> feed == null ? parts.series() * parts.strings() : feed.modules();
            case "chargeController" -> parts.controllers();
            case "inverter" -> parts.inverters();
            case "stringInverter" -> feed.stringInverters().orElseThrow().count();
            case "microinverter" -> feed.microinverters().orElseThrow().count();
            default -> system(design).bankLayout().series() * parts.parallel();
        };
    }

    private static <T> T named(List<T> products, String model, Function<T, String> name) {
        return products.stream()
                .filter(product -> name.apply(product).equals(model))
                .findFirst()
                .orElseThrow();
    }

    private Inspection() {}
}
