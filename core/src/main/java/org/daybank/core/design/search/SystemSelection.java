package org.daybank.core.design.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.quantity.Voltage;

/**
 * The cheapest systems that pass every rule, one for each system nominal voltage and chemistry that has any.
 *
 * @param brief the requirements
 * @param evaluation of the products on offer
 * @param systems one for each voltage and chemistry that has any
 * @param rejectedVoltages voltages below the lowest that has a system, or all where none has
 */
public record SystemSelection(
        DesignBrief brief,
        ProductEvaluation evaluation,
        List<CandidateSystem> systems,
        List<Voltage> rejectedVoltages) {
    /** Searches every voltage and chemistry that the wishes allow. */
    public static SystemSelection of(DesignBrief brief, ProductEvaluation evaluation) {
        List<CandidateSystem> systems = new ArrayList<>();
        List<Voltage> rejected = new ArrayList<>();
        for (Voltage voltage : brief.wishes().voltages()) {
            List<CandidateSystem> found = brief.wishes().chemistries().stream()
                    .map(chemistry -> VoltageSearch.cheapest(evaluation, voltage, chemistry))
                    .flatMap(Optional::stream)
                    .toList();
            if (found.isEmpty() && systems.isEmpty()) {
                rejected.add(voltage);
            }
            systems.addAll(found);
        }
        return new SystemSelection(brief, evaluation, systems, rejected);
    }

    /** Returns the cheapest system at the lowest voltage that has any; one with a shunt controller only where there is no other. */
    public Optional<CandidateSystem> selected() {
        return systems.stream()
                .min(Comparator.comparing((CandidateSystem candidate) -> candidate.nominalVoltage())
                        .thenComparing(CandidateSystem::shunt)
                        .thenComparing(CandidateSystem::price));
    }

    /** Returns why each rejected voltage has no system, in the order of the voltages. */
    public List<FailureAnalysis> failures() {
        return rejectedVoltages.stream()
                .map(voltage -> FailureAnalysis.of(evaluation, brief.wishes().chemistries(), voltage))
                .toList();
    }
}
