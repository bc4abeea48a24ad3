package org.daybank.core.inverter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Solvable;

/**
 * The string inverters of a catalogue held against an array and a grid.
 *
 * @param ranked those that fit, cheapest first, then by model
 * @param rejected the others, with every rule they break, in the order of the catalogue
 */
public record StringInverterSelection(List<StringInverterFit> ranked, List<Rejection> rejected) implements Solvable {
    /** Keeps copies. */
    public StringInverterSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /** Holds each of them against the array and the grid. */
    public static StringInverterSelection of(
            GridService grid, GridArray array, List<StringInverter> stringInverters, GridPolicy policy) {
        return of(stringInverters.stream()
                .map(inverter -> StringInverterFit.of(grid, array, inverter, policy))
                .toList());
    }

    /** Reads the ranked and the rejected off what was found of each. */
    public static StringInverterSelection of(List<StringInverterFit> fits) {
        return new StringInverterSelection(
                Assessment.ranked(fits, Comparator.comparing(StringInverterFit::price)), Assessment.rejected(fits));
    }

    @Override
    public Optional<String> unsolvedReason() {
        return ranked.isEmpty() ? Optional.of(NOTHING_FITS) : Optional.empty();
    }
}
