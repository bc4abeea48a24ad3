package org.daybank.api.sheet;

import java.util.List;
import org.daybank.core.design.NominalVoltage;
import org.daybank.core.design.SystemDesign;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/** Every product that was not chosen: those that fit as well, and those that do not, with each rule they break. */
final class Rejected {
    private final Html html = new Html();

    private Rejected() {}

    static Html of(SystemDesign design) {
        Rejected section = new Rejected();
        if (design.nominalVoltage() != null) {
            design.nominalVoltage().passedOver().forEach(section::voltage);
        }
        if (design.modules() != null) {
            section.kind(
                    "Modules",
                    design.modules().ranked().stream()
                            .map(choice -> choice.product())
                            .toList(),
                    design.modules().rejected());
        }
        if (design.batteries() != null) {
            section.kind(
                    "Batteries",
                    design.batteries().ranked().stream()
                            .map(fit -> fit.product())
                            .toList(),
                    design.batteries().rejected());
        }
        if (design.controllers() != null) {
            section.kind(
                    "Charge controllers",
                    design.controllers().ranked().stream()
                            .map(fit -> fit.product())
                            .toList(),
                    design.controllers().rejected());
        }
        if (design.inverters() != null) {
            section.kind(
                    "Inverters",
                    design.inverters().ranked().stream()
                            .map(fit -> fit.product())
                            .toList(),
                    design.inverters().rejected());
        }
        if (design.gridInverters() != null) {
            section.grid(design.gridInverters());
        }
        return section.html;
    }

    private void grid(GridInverterSelection inverters) {
        kind(
                "String inverters",
                inverters.stringInverters().ranked().stream()
                        .map(fit -> fit.product())
                        .toList(),
                inverters.stringInverters().rejected());
        kind(
                "Microinverters",
                inverters.microinverters().ranked().stream()
                        .map(fit -> fit.product())
                        .toList(),
                inverters.microinverters().rejected());
    }

    private void voltage(NominalVoltage.PassedOver passed) {
        html.element("h3", "A bus of " + Words.of(passed.voltage())).list(sentences(passed.reasons()));
    }

    private void kind(String kind, List<String> ranked, List<Rejection> rejected) {
        html.element("h3", kind);
        html.element(
                "p",
                ranked.isEmpty()
                        ? "None fits."
                        : "These fit, the first ranked first: " + String.join(", ", ranked) + ".");
        if (rejected.isEmpty()) {
            return;
        }
        html.open("dl");
        for (Rejection rejection : rejected) {
            html.element("dt", rejection.product())
                    .open("dd")
                    .list(sentences(rejection.failedChecks()))
                    .close();
        }
        html.close();
    }

    static List<String> sentences(List<Check> checks) {
        return checks.stream().map(check -> check.message().toString()).toList();
    }
}
