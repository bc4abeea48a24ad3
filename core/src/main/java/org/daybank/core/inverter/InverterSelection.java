package org.daybank.core.inverter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Solvable;

/**
 * The inverters of a catalogue held against a need.
 *
 * @param ranked those that fit, cheapest first, then by model
 * @param rejected the others, with every rule they break, in the order of the catalogue
 */
public record InverterSelection(List<InverterFit> ranked, List<Rejection> rejected) implements Solvable {
    /** Keeps copies. */
    public InverterSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /** Holds each inverter against the need. */
    public static InverterSelection of(InverterNeed need, List<Inverter> inverters, InverterPolicy policy) {
        return of(inverters.stream()
                .map(inverter -> InverterFit.of(need, inverter, policy))
                .toList());
    }

    /** Reads the ranked and the rejected off what was found of each. */
    public static InverterSelection of(List<InverterFit> fits) {
        return new InverterSelection(
                Assessment.ranked(fits, Comparator.comparing(InverterFit::price)), Assessment.rejected(fits));
    }

    @Override
    public Optional<String> unsolvedReason() {
        return ranked.isEmpty() ? Optional.of(NOTHING_FITS) : Optional.empty();
    }
}
