package org.daybank.api.sheet;

import java.util.Collections;
import java.util.List;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.GridDesign;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.inverter.TrackerStrings;
import org.daybank.core.inverter.UnitStrings;

/** How modules and batteries are joined. */
final class Layouts {
    private Layouts() {}

    static Html of(DesignOutcome design) {
        Html html = new Html();
        design.batterySystem().ifPresent(system -> onBank(html, system));
        if (design instanceof GridDesign grid) {
            grid.system().stringInverters().ifPresent(fit -> strings(html, fit));
            grid.system().microinverters().ifPresent(fit -> branches(html, fit));
        }
        return html;
    }

    private static void onBank(Html html, BatterySystem system) {
        ArrayLayout array = system.array();
        html.add(Rows.figure(
                "strings",
                "Modules: %s in parallel, each of %s in series; strings on each controller: %s"
                        .formatted(Words.counted(array.strings(), "string"), array.series(), shared(array)),
                Collections.nCopies(array.strings(), array.series())));
        BankLayout bank = system.bankLayout();
        html.add(Rows.figure(
                "batteries",
                "Batteries: %s in parallel, each of %s in series; %s nominal, %s in all"
                        .formatted(
                                Words.counted(bank.parallel(), "string"),
                                bank.series(),
                                Words.of(bank.trueNominal()),
                                Words.of(bank.ratedCapacity())),
                Collections.nCopies(bank.parallel(), bank.series())));
        html.add(BankFacts.of(system));
    }

    private static String shared(ArrayLayout array) {
        List<String> each = array.stringsOnEach().stream().map(String::valueOf).toList();
        return String.join(", ", each);
    }

    private static void strings(Html html, StringInverterFit fit) {
        int drawn = 0;
        for (UnitStrings unit : fit.units()) {
            for (TrackerStrings tracker : unit.trackers()) {
                drawn++;
                html.add(Rows.figure(
                        "tracker-" + drawn,
                        "On %s of each of %s %s: %s in parallel, each of %s in series"
                                .formatted(
                                        Words.counted(tracker.trackers(), "tracker"),
                                        Words.counted(unit.units(), "unit"),
                                        fit.product(),
                                        Words.counted(tracker.strings(), "string"),
                                        Words.counted(tracker.series(), "module")),
                        Collections.nCopies(tracker.strings(), tracker.series())));
            }
        }
    }

    private static void branches(Html html, MicroinverterFit fit) {
        html.element(
                "p",
                "%s stand behind each microinverter %s; %s are shared among %s of at most %s each, which carry %s."
                        .formatted(
                                Words.counted(fit.modulesOnEach(), "module"),
                                fit.product(),
                                Words.counted(fit.count(), "unit"),
                                Words.counted(fit.branches(), "branch circuit"),
                                Words.counted(fit.mostOnBranch(), "unit"),
                                Words.of(fit.branchCurrent())));
    }
}
