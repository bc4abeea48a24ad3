package org.daybank.core.design.search;

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
 * Finds the cheapest system of one system nominal voltage and chemistry: inverters in the order of price, and with each the
 * modules, controllers and banks that may still make a cheaper system, by lower bounds that hold for every layout. What the
 * bounds leave is evaluated in full, the power drawn by its controllers included, so that the result is exact.
 */
public final class VoltageSearch {
    private static final long NO_LIMIT = Long.MAX_VALUE / 4;

    private final ProductEvaluation evaluation;
    private final Voltage voltage;
    private final Chemistry chemistry;
    private final List<SearchSpace> spaces = new ArrayList<>();
    private @Nullable CandidateSystem best;

    /** Batteries that use their heaters, or those that do not, with the arrays of one charge path. */
    private record SearchSpace(
            boolean heated, BatteryCandidates batteries, ArrayCandidates arrays, PartRequirements minimum) {
        /** Minimum price of bank, modules and controllers. */
        double minimumPrice() {
            return batteries.banks(minimum.bank()).minimumPrice().orElseThrow() + arrays.minimumPrice(minimum.array());
        }
    }

    private VoltageSearch(ProductEvaluation evaluation, Voltage voltage, Chemistry chemistry) {
        this.evaluation = evaluation;
        this.voltage = voltage;
        this.chemistry = chemistry;
    }

    /** Returns the cheapest system that passes every rule; one with a shunt controller only where there is no other. */
    public static Optional<CandidateSystem> cheapest(
            ProductEvaluation evaluation, Voltage voltage, Chemistry chemistry) {
        return new VoltageSearch(evaluation, voltage, chemistry)
                .cheapest(List.of(kind -> kind != ControllerKind.SHUNT, kind -> kind == ControllerKind.SHUNT));
    }

    /** Returns the cheapest system that passes every rule and has controllers of one kind. */
    public static Optional<CandidateSystem> cheapest(
            ProductEvaluation evaluation, Voltage voltage, Chemistry chemistry, ControllerKind kind) {
        return new VoltageSearch(evaluation, voltage, chemistry).cheapest(List.of(kind::equals));
    }

    /** The cheapest system with the first of some groups of controller kinds that makes any. */
    private Optional<CandidateSystem> cheapest(List<Predicate<ControllerKind>> groups) {
        boolean needsInverter = evaluation.requirements().needsInverter();
        List<InverterFit> inverters = needsInverter ? evaluation.fittingInverters(voltage, chemistry) : List.of();
        if (needsInverter && inverters.isEmpty()) {
            return Optional.empty();
        }
        for (Predicate<ControllerKind> group : groups) {
            if (best == null) {
                prepare(group);
                search(inverters);
            }
        }
        return Optional.ofNullable(best);
    }

    private void prepare(Predicate<ControllerKind> group) {
        spaces.clear();
        for (boolean heated : List.of(false, true)) {
            PartRequirements minimum = evaluation.requirements().minimum(voltage, chemistry, heated);
            BatteryCandidates batteries = evaluation.batteryCandidates(minimum, chemistry, heated);
            if (batteries.isEmpty()) {
                continue;
            }
            for (ArrayCandidates arrays : evaluation.arrayCandidates(minimum, voltage, chemistry, group)) {
                if (!arrays.isEmpty()
                        && arrays.minimumChargingAmperes()
                                <= batteries.maximumChargeCurrent().amperes()) {
                    spaces.add(new SearchSpace(heated, batteries, arrays, minimum));
                }
            }
        }
    }

    private void search(List<InverterFit> inverters) {
        if (!evaluation.requirements().needsInverter()) {
            search((InverterFit) null);
            return;
        }
        double minimum =
                spaces.stream().mapToDouble(SearchSpace::minimumPrice).min().orElse(Double.MAX_VALUE);
        for (InverterFit inverter : inverters) {
            if (inverter.price().minorUnits() + minimum >= limit()) {
                break;
            }
            search(inverter);
        }
    }

    /** The price that the next system must be below, in minor units. */
    private long limit() {
        return best == null ? NO_LIMIT : best.price().minorUnits();
    }

    private void search(@Nullable InverterFit inverter) {
        for (SearchSpace space : spaces) {
            new InverterSearch(inverter, space).search();
        }
    }

    /** The systems with one inverter, or none, in one search space. */
    private final class InverterSearch {
        private final @Nullable InverterFit inverter;
        private final SearchSpace space;
        private final long price;
        private final Level undrawn;
        private final long minimumBankPrice;
        private final Map<Power, Level> levels = new HashMap<>();

        /** The requirements with one power drawn by the controllers, and the banks that meet them. */
        private record Level(PartRequirements requirements, BatteryCandidates.Banks banks) {}

        InverterSearch(@Nullable InverterFit inverter, SearchSpace space) {
            this.inverter = inverter;
            this.space = space;
            this.price = inverter == null ? 0 : inverter.price().minorUnits();
            this.undrawn = level(Power.ZERO);
            this.minimumBankPrice = undrawn.banks().minimumPrice().orElseThrow();
        }

        private Level level(Power controllerDraw) {
            return levels.computeIfAbsent(controllerDraw, draw -> {
                PartRequirements requirements =
                        evaluation.requirements().parts(voltage, chemistry, inverter, space.heated(), draw);
                return new Level(requirements, space.batteries().banks(requirements.bank()));
            });
        }

        void search() {
            ArrayCandidates arrays = space.arrays();
            if (price
                            + minimumBankPrice
                            + arrays.minimumPrice(undrawn.requirements().array())
                    < limit()) {
                arrays.visitCheaperThan(
                        undrawn.requirements().array(), () -> limit() - price - minimumBankPrice, this::visit);
            }
        }

        /** A pair with the power that one, two … of its controllers draw. */
        private void visit(ArrayCandidates.ModuleOption module, ChargeController controller) {
            for (int count = 1; count <= controller.mostInParallel(); count++) {
                Level level = level(controller.selfConsumption().times(count));
                Optional<ArrayOffer> offer = evaluation.offer(
                        module.extremes(),
                        voltage,
                        chemistry,
                        level.requirements().budget());
                if (offer.isEmpty()) {
                    return;
                }
                ChargerFit fit = evaluation.controller(voltage, chemistry, null, offer.get(), controller);
                // with more draw the requirements are higher: the pair costs no less and fits no better
                if (!fit.fits() || price + fit.priceWithArray().minorUnits() + minimumBankPrice >= limit()) {
                    return;
                }
                addBanks(level, offer.get(), fit, count);
            }
        }

        private void addBanks(Level level, ArrayOffer offer, ChargerFit fit, int counted) {
            long array = fit.priceWithArray().minorUnits();
            for (BankFit cheapest : level.banks().cheaperThan(limit() - price - array)) {
                for (BankFit bank = cheapest; bank.fits(); bank = level.banks().withOneStringMore(bank)) {
                    BankLayout layout = Objects.requireNonNull(bank.layout());
                    if (price + array + layout.price().minorUnits() >= limit()) {
                        break;
                    }
                    boolean accepted = fit.chargingCurrent().compareTo(layout.maximumChargeCurrent()) <= 0;
                    // another layout of the same pair may give less current
                    ChargerFit charger =
                            accepted ? fit : evaluation.controller(voltage, chemistry, layout, offer, fit.controller());
                    if (charger.fits() && charger.count() <= counted) {
                        propose(evaluation.system(level.requirements(), inverter, bank, charger));
                    }
                    if (accepted) {
                        break;
                    }
                }
            }
        }
    }

    private void propose(CandidateSystem candidate) {
        if (candidate.price().minorUnits() < limit()) {
            best = candidate;
        }
    }
}
