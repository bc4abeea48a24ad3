package org.daybank.core.bank;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Solvable;

/**
 * The batteries of a catalogue held against a need: those that make a bank, cheapest first, and those that do not, with
 * every rule they break.
 *
 * @param ranked the banks, by price, then by model
 * @param rejected the others, in the order of the catalogue
 */
public record BankSelection(List<BankFit> ranked, List<Rejection> rejected) implements Solvable {
    /** Keeps copies. */
    public BankSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /** Holds each battery against the need. */
    public static BankSelection of(BankNeed need, List<Battery> batteries, BankPolicy policy) {
        return of(batteries.stream()
                .map(battery -> BankFit.of(need, battery, policy))
                .toList());
    }

    /** Reads the ranked and the rejected off what was found of each battery. */
    public static BankSelection of(List<BankFit> fits) {
        return new BankSelection(
                Assessment.ranked(
                        fits,
                        Comparator.comparing(
                                fit -> Objects.requireNonNull(fit.layout()).price())),
                Assessment.rejected(fits));
    }

    @Override
    public Optional<String> unsolvedReason() {
        return ranked.isEmpty() ? Optional.of(NOTHING_FITS) : Optional.empty();
    }
}
