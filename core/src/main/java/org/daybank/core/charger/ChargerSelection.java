package org.daybank.core.charger;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Solvable;

/**
 * The controllers of a catalogue held against one module and a need.
 *
 * @param ranked those that fit, in the {@link #RECOMMENDED} order, each with its yearly energy over the best of them
 * @param rejected the others, with every rule they break, in the order of the catalogue
 */
public record ChargerSelection(List<ChargerFit> ranked, List<Rejection> rejected) implements Solvable {
    /** Cheapest first with their modules, then by model; shunt controllers after all others, whatever they cost. */
    public static final Comparator<ChargerFit> RECOMMENDED = Comparator.comparing(
                    (ChargerFit fit) -> fit.controller().kind() == ControllerKind.SHUNT)
            .thenComparing(ChargerFit::priceWithArray)
            .thenComparing(ChargerFit::product)
            .thenComparing(fit -> fit.array().product());

    /** Keeps copies. */
    public ChargerSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /** Holds each controller against the modules and the need. */
    public static ChargerSelection of(
            ChargerNeed need, ArrayOffer offer, List<ChargeController> controllers, ChargerPolicy policy) {
        return of(controllers.stream()
                .map(controller -> ChargerFit.of(need, offer, controller, policy))
                .toList());
    }

    /** Reads the ranked and the rejected off what was found of each. */
    public static ChargerSelection of(List<ChargerFit> fits) {
        return new ChargerSelection(againstBest(Assessment.ranked(fits, RECOMMENDED)), Assessment.rejected(fits));
    }

    private static List<ChargerFit> againstBest(List<ChargerFit> fits) {
        Energy best = fits.stream()
                .map(ChargerFit::yearlyEnergy)
                .max(Comparator.naturalOrder())
                .orElse(Energy.ZERO);
        if (best.compareTo(Energy.ZERO) <= 0) {
            return fits;
        }
        return fits.stream()
                .map(fit ->
                        fit.withEnergyAgainstBest(Ratio.of(fit.yearlyEnergy().dividedBy(best))))
                .toList();
    }

    /** What can hurt with the controller that is recommended first. */
    public List<Hazard> hazards() {
        Diversion diversion = ranked.isEmpty() ? null : ranked.get(0).diversion();
        return diversion == null ? List.of() : List.of(diversion.hazard());
    }

    @Override
    public Optional<String> unsolvedReason() {
        return ranked.isEmpty() ? Optional.of(NOTHING_FITS) : Optional.empty();
    }
}
