package org.daybank.core.design;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.jspecify.annotations.Nullable;

/**
 * Every module with every controller, judged only as far as needed: in the order of what the pair costs at the least, shunt
 * controllers last, until none that is left can be recommended over what was found.
 */
final class ArrayChoices {
    private final ChargerNeed need;
    private final ChargerPolicy policy;
    private final List<Pair> pairs;
    private final @Nullable ChargerFit[] judged;

    ArrayChoices(ChargerNeed need, List<ArrayOffer> offers, List<ChargeController> controllers, ChargerPolicy policy) {
        this.need = need;
        this.policy = policy;
        this.pairs = offers.stream()
                .flatMap(offer -> controllers.stream().map(controller -> new Pair(offer, controller)))
                .sorted(Comparator.comparing(Pair::shunt).thenComparing(Pair::atLeastMinorUnits))
                .toList();
        this.judged = new @Nullable ChargerFit[pairs.size()];
    }

    /**
     * The pair to recommend of those that keep every rule and charge with no more than a bank takes.
     *
     * @param mostDraw what the controllers may draw around the clock
     */
    Optional<ChargerFit> cheapest(Current maximumChargeCurrent, Power mostDraw) {
        ChargerFit best = null;
        for (int i = 0; i < pairs.size(); i++) {
            Pair pair = pairs.get(i);
            if (best != null && !pair.mayBeat(best)) {
                break;
            }
            ChargerFit fit = judge(i);
            boolean usable = fit.fits()
                    && fit.chargingCurrent().compareTo(maximumChargeCurrent) <= 0
                    && fit.selfConsumption().compareTo(mostDraw) <= 0;
            if (usable && (best == null || ChargerSelection.RECOMMENDED.compare(fit, best) < 0)) {
                best = fit;
            }
        }
        return Optional.ofNullable(best);
    }

    private ChargerFit judge(int pair) {
        ChargerFit known = judged[pair];
        if (known == null) {
            known = ChargerFit.of(need, pairs.get(pair).offer(), pairs.get(pair).controller(), policy);
            judged[pair] = known;
        }
        return known;
    }

    /** A module and a controller. */
    private record Pair(ArrayOffer offer, ChargeController controller) {
        boolean shunt() {
            return controller.kind() == ControllerKind.SHUNT;
        }

        /** Whether it may still be recommended over what was found, going by price and kind alone. */
        boolean mayBeat(ChargerFit found) {
            boolean foundShunt = found.controller().kind() == ControllerKind.SHUNT;
            return shunt() == foundShunt
                    && atLeastMinorUnits() <= found.priceWithArray().minorUnits();
        }

        /** What the two cost at the least: as few modules as may do, and one controller. */
        long atLeastMinorUnits() {
            return offer.leastPriceMinorUnits() + controller.price().minorUnits();
        }
    }
}
