package org.daybank.core.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the cheapest system of one bus voltage and chemistry: inverters by price, and behind each the modules, controllers
 * and banks that may still make a cheaper whole, by bounds that hold for every layout. What a bound leaves is judged in full,
 * with what its controllers draw in its budget, so that the result is exact.
 */
final class BusSearch {
    private final Search search;
    private final Voltage voltage;
    private final Chemistry chemistry;
    private final List<Side> sides = new ArrayList<>();
    private @Nullable Candidate best;

    /** Batteries that are heated, or those that are not, with the arrays on one path. */
    private record Side(boolean heated, BankChoices banks, ArrayChoices arrays, Reckoning least) {
        /** What bank, modules and controllers cost at the least. */
        double atLeast(Reckoning reckoning) {
            return bankAtLeast(reckoning) + arrays.least(reckoning.array());
        }

        long bankAtLeast(Reckoning reckoning) {
            return banks.least(reckoning.bank()).orElseThrow();
        }
    }

    BusSearch(Search search, Voltage voltage, Chemistry chemistry) {
        this.search = search;
        this.voltage = voltage;
        this.chemistry = chemistry;
    }

    /** The cheapest that keeps every rule; one with a shunt controller when there is no other. */
    Optional<Candidate> cheapest() {
        return cheapest(List.of(kind -> kind != ControllerKind.SHUNT, kind -> kind == ControllerKind.SHUNT));
    }

    /** The cheapest that charges through controllers of one kind. */
    Optional<Candidate> cheapest(ControllerKind kind) {
        return cheapest(List.of(kind::equals));
    }

    /** The cheapest with the first of some sorts of controller that any makes a whole with. */
    private Optional<Candidate> cheapest(List<Predicate<ControllerKind>> sorts) {
        List<InverterFit> inverters = search.needs().needsInverter() ? search.fitting(voltage, chemistry) : List.of();
        if (search.needs().needsInverter() && inverters.isEmpty()) {
            return Optional.empty();
        }
        for (Predicate<ControllerKind> sort : sorts) {
            if (best == null) {
                prepare(sort);
                look(inverters);
            }
        }
        return Optional.ofNullable(best);
    }

    private void prepare(Predicate<ControllerKind> sort) {
        sides.clear();
        for (boolean heated : List.of(false, true)) {
            Reckoning least = search.needs().least(voltage, chemistry, heated);
            BankChoices banks = search.bankChoices(least, chemistry, heated);
            if (banks.least(least.bank()).isPresent()) {
                for (ArrayChoices arrays : search.arrayChoices(least, voltage, chemistry, sort)) {
                    if (!arrays.empty()
                            && arrays.leastChargingAmperes()
                                    <= banks.mostChargeCurrent().amperes()) {
                        sides.add(new Side(heated, banks, arrays, least));
                    }
                }
            }
        }
    }

    private void look(List<InverterFit> inverters) {
        if (!search.needs().needsInverter()) {
            look((InverterFit) null);
            return;
        }
        double floor = sides.stream()
                .mapToDouble(side -> side.atLeast(side.least()))
                .min()
                .orElse(Double.MAX_VALUE);
        for (InverterFit inverter : inverters) {
            if (inverter.price().minorUnits() + floor >= limit()) {
                break;
            }
            look(inverter);
        }
    }

    /** What the next best must cost less than. */
    private long limit() {
        return best == null ? Long.MAX_VALUE / 4 : best.price().minorUnits();
    }

    private void look(@Nullable InverterFit inverter) {
        for (Side side : sides) {
            Behind behind = new Behind(inverter, side);
            behind.look();
        }
    }

    /** One inverter, or none, with one side. */
    private final class Behind {
        private final @Nullable InverterFit inverter;
        private final Side side;
        private final Reckoning none;
        private final long price;
        private final long bankAtLeast;
        private final Map<Power, Reckoning> reckonings = new HashMap<>();

        Behind(@Nullable InverterFit inverter, Side side) {
            this.inverter = inverter;
            this.side = side;
            this.price = inverter == null ? 0 : inverter.price().minorUnits();
            this.none = reckoning(Power.ZERO);
            this.bankAtLeast = side.bankAtLeast(none);
        }

        private Reckoning reckoning(Power counted) {
            return reckonings.computeIfAbsent(
                    counted, draw -> search.needs().reckoning(voltage, chemistry, inverter, side.heated(), draw));
        }

        void look() {
            if (price + side.atLeast(none) < limit()) {
                side.arrays().under(none.array(), () -> limit() - price - bankAtLeast, this::look);
            }
        }

        /** A pair, with what one, two … of its controllers draw counted. */
        private void look(ArrayChoices.Modules modules, ChargeController controller) {
            for (int count = 1; count <= controller.mostInParallel(); count++) {
                Reckoning reckoning = reckoning(controller.selfConsumption().times(count));
                Optional<ArrayOffer> offer = search.offer(modules.extremes(), voltage, chemistry, reckoning.budget());
                if (offer.isEmpty()) {
                    return;
                }
                ChargerFit fit = search.charger(voltage, chemistry, null, offer.get(), controller);
                // where more is counted, more is asked: it costs no less and fits no better
                if (!fit.fits() || price + fit.priceWithArray().minorUnits() + bankAtLeast >= limit()) {
                    return;
                }
                look(reckoning, offer.get(), fit, count);
            }
        }

        private void look(Reckoning reckoning, ArrayOffer offer, ChargerFit fit, int counted) {
            long array = fit.priceWithArray().minorUnits();
            long highest = limit() - price - (long) side.arrays().least(none.array());
            for (BankFit bank : reckoning.banks(side.banks(), highest)) {
                if (price + array + BankChoices.price(bank) >= limit()) {
                    break;
                }
                for (BankFit strings = bank;
                        strings.fits();
                        strings = side.banks().larger(reckoning.bank(), strings)) {
                    BankLayout layout = Objects.requireNonNull(strings.layout());
                    if (price + array + layout.price().minorUnits() >= limit()) {
                        break;
                    }
                    boolean taken = fit.chargingCurrent().compareTo(layout.maximumChargeCurrent()) <= 0;
                    // another layout of the same pair may bring less current
                    ChargerFit charger =
                            taken ? fit : search.charger(voltage, chemistry, layout, offer, fit.controller());
                    if (charger.fits() && charger.count() <= counted) {
                        propose(search.complete(reckoning, inverter, strings, charger));
                    }
                    if (taken) {
                        break;
                    }
                }
            }
        }
    }

    private void propose(Candidate candidate) {
        if (candidate.price().minorUnits() < limit()) {
            best = candidate;
        }
    }
}
