package org.daybank.core.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Voltage;

/**
 * The cheapest complete systems that keep every rule, at each voltage and with each chemistry.
 *
 * @param brief what was asked
 * @param search what was looked through
 * @param complete one for each voltage and chemistry that has any
 * @param without voltages below the lowest complete one
 */
record Draft(DesignBrief brief, Search search, List<Candidate> complete, List<Voltage> without) {
    static Draft of(DesignBrief brief, Search search) {
        List<Candidate> complete = new ArrayList<>();
        List<Voltage> without = new ArrayList<>();
        for (Voltage voltage : brief.wishes().voltages()) {
            List<Candidate> found = brief.wishes().chemistries().stream()
                    .map(chemistry -> search.cheapest(voltage, chemistry))
                    .flatMap(Optional::stream)
                    .toList();
            if (found.isEmpty() && complete.isEmpty()) {
                without.add(voltage);
            }
            complete.addAll(found);
        }
        return new Draft(brief, search, complete, without);
    }

    /** The lowest voltage that does, the cheapest there; one with a shunt controller only for want of another. */
    Optional<Candidate> chosen() {
        return complete.stream()
                .min(Comparator.comparing((Candidate candidate) -> candidate.nominalVoltage())
                        .thenComparing(Candidate::shunt)
                        .thenComparing(Candidate::price));
    }
}
