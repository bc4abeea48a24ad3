package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadEnergy;
import org.daybank.core.site.Site;

/** What the customer asked for: the place and the loads. */
final class Asked {
    private Asked() {}

    static Html of(DesignOutcome design) {
        Site site = design.brief().resolved().site();
        Html html = new Html()
                .element(
                        "p",
                        "Latitude %s, %s above the sea. The air has been as cold as %s and as hot as %s. The array stands at the end of %s of cable."
                                .formatted(
                                        site.latitude(),
                                        Words.of(site.elevation()),
                                        Words.of(site.recordLow()),
                                        Words.of(site.resolved().recordHigh()),
                                        Words.of(design.brief().array().cableLength())));
        List<List<String>> rows = new ArrayList<>();
        // the budget of a backup holds the essential loads alone
        List<Load> budgeted = design.budget().demand().loads();
        List<LoadEnergy> energies = design.budget().table();
        for (Load load : design.brief().loads()) {
            int place = budgeted.indexOf(load);
            rows.add(List.of(
                    load.name(),
                    Words.of(load.kind()),
                    Words.of(load.supply()),
                    load.count() + " × " + Words.of(load.power()),
                    place < 0 ? "not backed up" : Words.of(energies.get(place).dailyEnergy()),
                    load.essential() ? "yes" : "no"));
        }
        return html.table("Loads", List.of("Load", "Kind", "Supply", "Power", "Energy a day", "Essential"), rows);
    }
}
