package org.daybank.core.generator;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/** What can hurt someone where an engine stands by. */
final class GeneratorHazards {
    private GeneratorHazards() {}

    static List<Hazard> of(GeneratorSize size) {
        List<Hazard> hazards = new ArrayList<>();
        hazards.add(
                hazard(
                        "generatorExhaust",
                        Severity.DANGER,
                        "The exhaust of an engine holds carbon monoxide, which kills unseen and without smell; the pipe is hot enough to set fire.",
                        "Run it outdoors or in a room of its own with a tight exhaust pipe, away from windows and air inlets; fit carbon monoxide alarms where people sleep; keep fuel apart and fill it cold."));
        hazards.add(
                hazard(
                        "generatorTransfer",
                        Severity.DANGER,
                        "A generator joined to an inverter's output or to the grid destroys both and makes dead lines live; two bonds of neutral to earth let current flow where nobody expects it.",
                        "Connect it only through the AC input of the inverter or a transfer switch that cannot close both ways; bond neutral to earth at one source only in each mode."));
        size.checks().stream()
                .filter(check -> check.rule().equals("hoursOfMonth") && !check.passed())
                .map(Check::message)
                .forEach(sentence -> hazards.add(hazard(
                        "generatorHours",
                        Severity.WARNING,
                        sentence + " A month has no more hours: the bank runs empty all the same.",
                        "Charge with more current, or add modules.")));
        return List.copyOf(hazards);
    }

    private static Hazard hazard(String code, Severity severity, String text, String action) {
        return new Hazard(code, severity, "generator", text, action + " " + Hazard.LOCAL_CODE);
    }
}
