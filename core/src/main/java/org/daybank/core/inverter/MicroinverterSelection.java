package org.daybank.core.inverter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Solvable;

/**
 * The microinverters of a catalogue held against an array and a grid.
 *
 * @param ranked those that fit, cheapest first, then by model
 * @param rejected the others, with every rule they break, in the order of the catalogue
 */
public record MicroinverterSelection(List<MicroinverterFit> ranked, List<Rejection> rejected) implements Solvable {
    /** Keeps copies. */
    public MicroinverterSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /** Holds each of them against the array and the grid. */
    public static MicroinverterSelection of(
            GridService grid, GridArray array, List<Microinverter> microinverters, GridPolicy policy) {
        return of(microinverters.stream()
                .map(inverter -> MicroinverterFit.of(grid, array, inverter, policy))
                .toList());
    }

    /** Reads the ranked and the rejected off what was found of each. */
    public static MicroinverterSelection of(List<MicroinverterFit> fits) {
        return new MicroinverterSelection(
                Assessment.ranked(fits, Comparator.comparing(MicroinverterFit::price)), Assessment.rejected(fits));
    }

    @Override
    public Optional<String> unsolvedReason() {
        return ranked.isEmpty() ? Optional.of(NOTHING_FITS) : Optional.empty();
    }
}
