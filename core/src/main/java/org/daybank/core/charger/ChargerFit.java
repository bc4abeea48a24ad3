package org.daybank.core.charger;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Finding;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Sentence;
import org.daybank.core.working.ToldElsewhere;

/**
 * One controller held against one module and a need: how many it takes, the strings on each, and every rule with its
 * margin. Where no layout keeps every rule, the findings are those of the layout that comes nearest.
 *
 * @param product model of the controller
 * @param controller its data sheet
 * @param count how many of it
 * @param array modules in series and parallel
 * @param chargingCurrent what flows into the bank in full sun at its nominal voltage, no more than the controllers give
 * @param chargingCurrentAtAbsorption the same at the absorption voltage
 * @param clipping share of the year's energy lost because the output is full
 * @param price of the controllers; the modules' price stands with the array
 * @param limits every rule, kept or broken
 */
public record ChargerFit(
        String product,
        @ToldElsewhere ChargeController controller,
        int count,
        ArrayLayout array,
        Current chargingCurrent,
        Current chargingCurrentAtAbsorption,
        Ratio clipping,
        Money price,
        List<Finding> limits) {
    /** Keeps a copy. */
    public ChargerFit {
        limits = List.copyOf(limits);
    }

    /** The same held against further rules. */
    public ChargerFit and(List<Finding> further) {
        return new ChargerFit(
                product,
                controller,
                count,
                array,
                chargingCurrent,
                chargingCurrentAtAbsorption,
                clipping,
                price,
                Stream.concat(limits.stream(), further.stream()).toList());
    }

    /** Whether every rule is kept. */
    public boolean fits() {
        return limits.stream().allMatch(Finding::met);
    }

    /** Price of the controllers and the modules. */
    public Money priceWithArray() {
        return price.plus(array.price());
    }

    /** What all controllers draw around the clock. */
    public Power selfConsumption() {
        return controller.selfConsumption().times(count);
    }

    /** Why it does not fit. */
    public Rejection rejection() {
        return Rejection.of(controller.model(), limits);
    }

    /** Holds a controller against the modules and the need: the cheapest layout that keeps every rule. */
    public static ChargerFit of(ChargerNeed need, ArrayOffer offer, ChargeController controller, ChargerPolicy policy) {
        Candidate rules = new Candidate(need, offer, controller, policy);
        int least = rules.leastInSeries();
        int most = Math.max(least, rules.mostInSeries());
        ChargerFit best = rules.judge(least);
        for (int series = least + 1; series <= most; series++) {
            ChargerFit next = rules.judge(series);
            if (better(next, best)) {
                best = next;
            }
        }
        return best;
    }

    private static boolean better(ChargerFit next, ChargerFit best) {
        long nextBroken = broken(next);
        long bestBroken = broken(best);
        if (nextBroken != bestBroken) {
            return nextBroken < bestBroken;
        }
        // at one price the longer string: its wiring is thinner
        return next.priceWithArray().compareTo(best.priceWithArray()) <= 0;
    }

    private static long broken(ChargerFit fit) {
        return fit.limits().stream().filter(finding -> !finding.met()).count();
    }

    /** The rules for one controller, module and need. */
    private record Candidate(ChargerNeed need, ArrayOffer offer, ChargeController controller, ChargerPolicy policy) {

        private boolean direct() {
            return controller.kind().path() == ChargePath.DIRECT;
        }

        private ModuleExtremes extremes() {
            return offer.extremes();
        }

        private Voltage inputLimit() {
            return controller
                    .maximumInputVoltage()
                    .times(policy.openCircuitReserve().complement());
        }

        private Voltage operatingLimit() {
            return need.chargingVoltage().plus(controller.headroom());
        }

        /** The shortest string that works in the hottest sun; on the direct path the one the module's group says. */
        int leastInSeries() {
            Voltage group = offer.module().nominalGroup();
            if (direct() && group != null) {
                return (int) Math.max(1, Math.rint(need.nominalVoltage().dividedBy(group)));
            }
            if (controller.kind() == ControllerKind.STEP_UP_MPPT) {
                return 1;
            }
            return (int)
                    Math.max(1, Math.ceil(operatingLimit().dividedBy(extremes().hottestMaximumPower()) - 1e-12));
        }

        /** The longest string that neither the controller nor the module's insulation refuses on the coldest morning. */
        int mostInSeries() {
            if (direct()) {
                return leastInSeries();
            }
            Voltage limit = inputLimit().compareTo(offer.module().systemVoltage()) < 0
                    ? inputLimit()
                    : offer.module().systemVoltage();
            return (int) Math.floor(limit.dividedBy(extremes().coldestOpenCircuit()) + 1e-12);
        }

        ChargerFit judge(int series) {
            int modules = Math.max(1, offer.modulesFor(controller));
            int strings = (modules + series - 1) / series;
            int count = Math.min(strings, (strings + stringsOnOne(series) - 1) / stringsOnOne(series));
            ArrayLayout layout = ArrayLayout.shared(offer.module(), series, strings, count);
            List<Finding> limits = new ArrayList<>();
            judgeBank(limits);
            judgeStrings(layout, limits);
            judgeCurrents(layout, count, limits);
            judgeFunctions(limits);
            return new ChargerFit(
                    controller.model(),
                    controller,
                    count,
                    layout,
                    charging(layout, need.trueNominal()),
                    charging(layout, need.chargingVoltage()),
                    clipping(layout),
                    controller.price().times(count),
                    limits);
        }

        /** Strings that one controller takes by input current and clipping; at least one. */
        private int stringsOnOne(int series) {
            int strings = (int) Math.max(1, Math.floor(inputCurrentLimit().dividedBy(shortCircuit(1)) + 1e-12));
            while (strings > 1
                    && !direct()
                    && clipping(ArrayLayout.shared(offer.module(), series, strings, 1))
                                    .compareTo(policy.clippingLimit())
                            > 0) {
                strings--;
            }
            return strings;
        }

        /** What may come in: on the direct path it goes straight through, so the output's rating in the heat counts too. */
        private Current inputCurrentLimit() {
            Current output = controller.outputCurrentIn(need.hottestAir());
            Current input = controller.maximumInputCurrent();
            return direct() && output.compareTo(input) < 0 ? output : input;
        }

        /** Short-circuit current to reckon with, brighter sun and light on the back included. */
        private Current shortCircuit(int strings) {
            return offer.module()
                    .shortCircuitCurrent()
                    .times(offer.module().bifacialGain().onePlus())
                    .times(policy.shortCircuitFactor())
                    .times(strings);
        }

        /** What comes out in full sun, light on the back included as in the yield. */
        private Power fullSun(int strings, int series) {
            return offer.module()
                    .power()
                    .times(strings * series)
                    .times(offer.module().bifacialGain().onePlus())
                    .times(offer.whenNew())
                    .times(controller.efficiency());
        }

        /** Share of the year's energy over what the fullest controller can give at the bank's nominal voltage. */
        private Ratio clipping(ArrayLayout layout) {
            if (direct()) {
                return Ratio.ZERO;
            }
            Power most = controller.outputCurrentIn(need.hottestAir()).times(need.trueNominal());
            double fullSunShare = most.dividedBy(fullSun(layout.stringsOnEach().get(0), layout.series()));
            return offer.sunshine().shareAbove(Irradiance.wattsPerSquareMetre(1000 * fullSunShare));
        }

        private Current charging(ArrayLayout layout, Voltage bank) {
            Current total = Current.ZERO;
            Current rating = controller.outputCurrentIn(need.hottestAir());
            for (int strings : layout.stringsOnEach()) {
                Current offered = direct()
                        ? offer.module()
                                .maximumPowerCurrent()
                                .times(strings)
                                .times(offer.module().bifacialGain().onePlus())
                                .times(offer.whenNew())
                        : fullSun(strings, layout.series()).dividedBy(bank);
                total = total.plus(offered.compareTo(rating) < 0 ? offered : rating);
            }
            return total;
        }

        private void judgeBank(List<Finding> limits) {
            limits.add(Finding.that(
                    "busVoltage",
                    controller.busVoltages().contains(need.nominalVoltage()),
                    "The bank's nominal voltage is %s; this controller charges %s.",
                    need.nominalVoltage(),
                    controller.busVoltages()));
            limits.add(Finding.that(
                    "chemistry",
                    controller.chemistries().contains(need.chemistry()),
                    "The bank is %s; this controller can be set up for %s.",
                    need.chemistry(),
                    controller.chemistries()));
        }

        private void judgeStrings(ArrayLayout layout, List<Finding> limits) {
            Voltage coldest = extremes().coldestOpenCircuit(layout.series());
            limits.add(Finding.atMost(
                    "coldestOpenCircuitVoltage",
                    coldest,
                    inputLimit(),
                    "On the coldest morning the string of %s reaches %s; this controller withstands %s after a %s reserve.",
                    layout.series(),
                    coldest,
                    inputLimit(),
                    policy.openCircuitReserve()));
            limits.add(Finding.atMost(
                    "systemVoltage",
                    coldest,
                    offer.module().systemVoltage(),
                    "On the coldest morning the string of %s reaches %s; the modules are insulated for %s.",
                    layout.series(),
                    coldest,
                    offer.module().systemVoltage()));
            Voltage hottest = extremes().hottestMaximumPower(layout.series());
            if (controller.kind() == ControllerKind.STEP_UP_MPPT) {
                limits.add(Finding.atMost(
                        "openCircuitBelowBank",
                        coldest,
                        need.trueNominal(),
                        "A step-up controller needs an array below the bank's voltage."));
            } else {
                limits.add(Finding.atLeast(
                        "hottestMaximumPowerVoltage",
                        hottest,
                        operatingLimit(),
                        "In the hottest sun the string of %s falls to %s; charging takes %s.",
                        layout.series(),
                        hottest,
                        operatingLimit()));
            }
            if (direct()) {
                Voltage group = offer.module().nominalGroup();
                boolean whole = group != null
                        && layout.series() * group.volts()
                                == need.nominalVoltage().volts();
                limits.add(
                        group == null
                                ? Finding.that(
                                        "moduleGroup",
                                        false,
                                        "The module belongs to no 12 V or 24 V group: at the bank's own voltage much of its power is lost.")
                                : Finding.that(
                                        "moduleGroup",
                                        whole,
                                        "Modules of the %s group in strings of %s on a %s bank.",
                                        group,
                                        layout.series(),
                                        need.nominalVoltage()));
            }
        }

        private void judgeCurrents(ArrayLayout layout, int count, List<Finding> limits) {
            Current input = shortCircuit(layout.stringsOnEach().get(0));
            Current inputLimit = inputCurrentLimit();
            limits.add(Finding.atMost(
                    "inputCurrent",
                    input,
                    inputLimit,
                    "Strings on the fullest controller: %s. They bring %s, bright sun reckoned in; it takes %s.",
                    layout.stringsOnEach().get(0),
                    input,
                    inputLimit));
            Ratio clipping = clipping(layout);
            limits.add(new Finding(
                    "clipping",
                    clipping.compareTo(policy.clippingLimit()) <= 0,
                    null,
                    null,
                    Ratio.of(policy.clippingLimit().fraction() - clipping.fraction()),
                    Sentence.of(
                            "With its output full it loses %s of the year's energy; %s is accepted.",
                            clipping, policy.clippingLimit())));
            limits.add(Finding.that(
                    "controllersInParallel",
                    count <= controller.mostInParallel(),
                    "The array takes %s of them; at most %s may charge one bank together.",
                    count,
                    controller.mostInParallel()));
            Current charging = charging(layout, need.trueNominal());
            limits.add(Finding.atMost(
                    "bankChargeCurrent",
                    charging,
                    need.maximumChargeCurrent(),
                    "In full sun %s flow into the bank; it takes %s.",
                    charging,
                    need.maximumChargeCurrent()));
        }

        private void judgeFunctions(List<Finding> limits) {
            for (ControllerFunction function : need.functions()) {
                limits.add(Finding.that(
                        "function",
                        controller.functions().contains(function),
                        "Asked for: %s; this controller has: %s.",
                        function,
                        controller.functions().isEmpty() ? "nothing besides charging" : controller.functions()));
            }
        }
    }
}
