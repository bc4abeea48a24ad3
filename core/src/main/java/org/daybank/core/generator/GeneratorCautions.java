package org.daybank.core.generator;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.Caution;
import org.daybank.core.working.Finding;
import org.daybank.core.working.Severity;

/** What can hurt someone where an engine stands by. */
final class GeneratorCautions {
    private GeneratorCautions() {}

    static List<Caution> of(GeneratorSize size) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(
                caution(
                        "generatorExhaust",
                        Severity.DANGER,
                        "The exhaust of an engine holds carbon monoxide, which kills unseen and without smell; the pipe is hot enough to set fire.",
                        "Run it outdoors or in a room of its own with a tight exhaust pipe, away from windows and air inlets; fit carbon monoxide alarms where people sleep; keep fuel apart and fill it cold."));
        cautions.add(
                caution(
                        "generatorTransfer",
                        Severity.DANGER,
                        "A generator joined to an inverter's output or to the grid destroys both and makes dead lines live; two bonds of neutral to earth let current flow where nobody expects it.",
                        "Connect it only through the AC input of the inverter or a transfer switch that cannot close both ways; bond neutral to earth at one source only in each mode."));
        size.findings().stream()
                .filter(finding -> finding.rule().equals("hoursOfMonth") && !finding.met())
                .map(Finding::sentence)
                .forEach(sentence -> cautions.add(caution(
                        "generatorHours",
                        Severity.WARNING,
                        sentence + " A month has no more hours: the bank runs empty all the same.",
                        "Charge with more current, or add modules.")));
        return List.copyOf(cautions);
    }

    private static Caution caution(String code, Severity severity, String text, String action) {
        return new Caution(code, severity, "generator", text, action + " " + Caution.LOCAL_CODE);
    }
}
