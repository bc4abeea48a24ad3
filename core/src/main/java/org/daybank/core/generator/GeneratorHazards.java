package org.daybank.core.generator;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

/** What can hurt someone where an engine stands by. */
final class GeneratorHazards {
    private GeneratorHazards() {}

    static List<Hazard> of(GeneratorSize size) {
        List<Hazard> hazards = new ArrayList<>();
        hazards.add(Hazard.of(HazardCode.GENERATOR_EXHAUST, "generator"));
        hazards.add(Hazard.of(HazardCode.GENERATOR_TRANSFER, "generator"));
        size.checks().stream()
                .filter(check -> check.rule() == GeneratorRule.HOURS_OF_MONTH && !check.passed())
                .forEach(check -> hazards.add(
                        Hazard.of(HazardCode.GENERATOR_HOURS, "generator", value("message", check.message()))));
        return List.copyOf(hazards);
    }
}
