package org.daybank.api.sheet;

import java.util.List;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.EngineBackup;
import org.daybank.core.generator.EngineOrModules;
import org.daybank.core.generator.GeneratorSize;
import org.daybank.core.generator.WinterSource;

/** An engine generator for the hours in which sun and bank are not enough. */
final class Engine {
    private Engine() {}

    static Html of(DesignOutcome design) {
        Html html = new Html();
        EngineBackup engine =
                design.batterySystem().flatMap(BatterySystem::generator).orElse(null);
        if (engine == null) {
            return html;
        }
        GeneratorSize size = engine.size();
        html.element(
                "p",
                "Sun and bank are not enough in every hour. %s of %s, started at %s of charge and stopped at %s, would run %s a year, burn %s, and raise the share of hours in which every load gets all it asks to %s. To make up for no more than what is lacking takes %s and %s for %s, as the table has it. It is not in the parts list."
                        .formatted(
                                Words.counted(size.sets(), "generator"),
                                Words.of(size.rating()),
                                Words.percent(size.rule().startBelow()),
                                Words.percent(size.rule().stopAbove()),
                                Words.hours(engine.availability().engineTime()),
                                Words.of(engine.availability().fuel()),
                                Words.percent(engine.availability().availability()),
                                Words.hours(size.yearlyHours()),
                                Words.of(size.yearlyFuel()),
                                size.yearlyFuelCost()));
        EngineOrModules choice = engine.engineOrModules().orElse(null);
        if (choice != null) {
            html.element(
                    "p",
                    "%s instead would cost %s a year, the engine %s: %s by %s a year. That counts fuel and wear by the hour; the engine's price, about %s, is paid at once, and it ages while it stands as well."
                            .formatted(
                                    Words.counted(choice.modules(), "more module"),
                                    choice.modulesYearly(),
                                    choice.engineYearly(),
                                    choice.cheaper() == WinterSource.ENGINE
                                            ? "the engine is cheaper"
                                            : "the modules are cheaper",
                                    choice.saving(),
                                    size.price()));
        }
        html.table(
                "The engine by month",
                List.of("Month", "Missing", "Hours", "Made", "Fuel"),
                size.months().stream()
                        .map(month -> List.of(
                                Words.of(month.month()),
                                Words.of(month.shortfall()),
                                Words.hours(month.hours()),
                                Words.of(month.made()),
                                Words.of(month.fuel())))
                        .toList());
        return html.add(Missing.checks(size.checks()));
    }
}
