package org.daybank.core.charger;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.working.Check;

/** The rules for one controller, module and need. */
record ChargerRules(ChargerNeed need, ArrayOffer offer, ChargeController controller, ChargerPolicy policy) {

    private boolean direct() {
        return controller.kind().path() == ChargePath.DIRECT;
    }

    private ModuleExtremes extremes() {
        return offer.extremes();
    }

    private Voltage inputLimit() {
        return inputLimit(controller, policy);
    }

    /** The input voltage limit of a controller less the reserve for the open-circuit voltage. */
    static Voltage inputLimit(ChargeController controller, ChargerPolicy policy) {
        return controller
                .maximumInputVoltage()
                .times(policy.openCircuitReserve().complement());
    }

    private Voltage operatingLimit() {
        return strings().operatingLimit();
    }

    private StringLengths strings() {
        return new StringLengths(need, extremes(), controller, policy);
    }

    int leastInSeries() {
        return strings().minimum();
    }

    int mostInSeries() {
        return strings().maximum();
    }

    ChargerFit judge(int series) {
        int modules = Math.max(1, offer.modulesFor(controller));
        int strings = (modules + series - 1) / series;
        int count = Math.min(strings, (strings + stringsOnOne(series) - 1) / stringsOnOne(series));
        ArrayLayout layout = ArrayLayout.shared(offer.module(), series, strings, count);
        List<Check> checks = new ArrayList<>();
        judgeBank(need, controller, checks);
        judgeStrings(layout, checks);
        judgeCurrents(layout, count, checks);
        judgeFunctions(layout, checks);
        Ratio clipping = clipping(layout);
        Energy offered = offer.yearlyThrough(controller).times(layout.modules());
        Energy clipped = offered.times(clipping);
        Energy own = controller.selfConsumption().times(count).times(TimeSpan.years(1));
        return new ChargerFit(
                controller.model(),
                controller,
                count,
                layout,
                charging(layout, need.trueNominal()),
                charging(layout, need.chargingVoltage()),
                clipping,
                clipped,
                own,
                offered.minus(clipped).minus(own),
                null,
                need.functions().contains(ControllerFunction.DIVERSION_CONTROL) ? diverted(layout.power()) : null,
                controller.price().times(count),
                checks);
    }

    /** Strings that one controller takes by input current, input power, diversion and clipping; at least one. */
    private int stringsOnOne(int series) {
        double most = inputCurrentLimit().dividedBy(shortCircuit(1));
        Power inputPower = controller.maximumInputPower();
        if (inputPower != null) {
            most = Math.min(most, inputPower.dividedBy(rated(1, series)));
        }
        if (asked(ControllerFunction.DIVERSION_CONTROL)) {
            most = Math.min(
                    most,
                    controller
                            .outputCurrentIn(need.hottestAir())
                            .dividedBy(diverted(rated(1, series)).current()));
        }
        int strings = (int) Math.max(1, Math.floor(most + 1e-12));
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

    /** Rated power of the strings on one controller. */
    private Power rated(int strings, int series) {
        return offer.module().power().times(strings * series);
    }

    /** What comes out in full sun, light on the back included as in the yield. */
    private Power fullSun(int strings, int series) {
        return ArrayOffer.fullSunPower(rated(strings, series), offer.module(), offer.whenNew())
                .times(controller.efficiency());
    }

    /** Share of the year's energy over what the fullest controller can give at the bank's nominal voltage. */
    private Ratio clipping(ArrayLayout layout) {
        if (direct()) {
            return Ratio.ZERO;
        }
        Power most = ratedOutput(need, controller);
        return clipping(
                offer.sunshine(), most.dividedBy(fullSun(layout.stringsOnEach().get(0), layout.series())));
    }

    /** What a controller gives in the hottest air at the bank's nominal voltage. */
    static Power ratedOutput(ChargerNeed need, ChargeController controller) {
        return controller.outputCurrentIn(need.hottestAir()).times(need.trueNominal());
    }

    /** Share of the year's energy lost where the output is full at a share of full sun. */
    static Ratio clipping(IrradianceDistribution sunshine, double fullSunShare) {
        return sunshine.shareAbove(Irradiance.wattsPerSquareMetre(1000 * fullSunShare));
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

    /** The rules for a controller alone, which no module and no bank size changes. */
    static List<Check> ofController(ChargerNeed need, ChargeController controller) {
        List<Check> checks = new ArrayList<>();
        judgeBank(need, controller, checks);
        judgeEquipment(need, controller, checks);
        return checks;
    }

    private static void judgeBank(ChargerNeed need, ChargeController controller, List<Check> checks) {
        checks.add(Check.that(
                "busVoltage",
                controller.busVoltages().contains(need.nominalVoltage()),
                "The bank's nominal voltage is %s; this controller charges %s.",
                need.nominalVoltage(),
                controller.busVoltages()));
        checks.add(Check.that(
                "chemistry",
                controller.chemistries().contains(need.chemistry()),
                "The bank is %s; this controller can be set up for %s.",
                need.chemistry(),
                controller.chemistries()));
    }

    private void judgeStrings(ArrayLayout layout, List<Check> checks) {
        Voltage coldest = extremes().coldestOpenCircuit(layout.series());
        checks.add(Check.atMost(
                "coldestOpenCircuitVoltage",
                coldest,
                inputLimit(),
                "On the coldest morning the string of %s reaches %s; this controller withstands %s after a %s reserve.",
                layout.series(),
                coldest,
                inputLimit(),
                policy.openCircuitReserve()));
        checks.add(Check.atMost(
                "systemVoltage",
                coldest,
                offer.module().systemVoltage(),
                "On the coldest morning the string of %s reaches %s; the modules are insulated for %s.",
                layout.series(),
                coldest,
                offer.module().systemVoltage()));
        Voltage hottest = extremes().hottestMaximumPower(layout.series());
        boolean stepUp = controller.kind() == ControllerKind.STEP_UP_MPPT;
        if (stepUp || controller.minimumInputVoltage().compareTo(Voltage.ZERO) > 0) {
            checks.add(Check.atLeast(
                    "lowestInputVoltage",
                    hottest,
                    controller.minimumInputVoltage(),
                    "In the hottest sun the string of %s falls to %s; this controller works from %s.",
                    layout.series(),
                    hottest,
                    controller.minimumInputVoltage()));
        }
        if (stepUp) {
            checks.add(Check.atMost(
                    "openCircuitBelowBank",
                    coldest,
                    need.lowestVoltage(),
                    "On the coldest morning the string of %s reaches %s; a step-up controller needs it below the bank at its lowest, %s.",
                    layout.series(),
                    coldest,
                    need.lowestVoltage()));
        } else {
            checks.add(Check.atLeast(
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
                    && layout.series() * group.volts() == need.nominalVoltage().volts();
            checks.add(
                    group == null
                            ? Check.that(
                                    "moduleGroup",
                                    false,
                                    "The module belongs to no 12 V or 24 V group: at the bank's own voltage much of its power is lost.")
                            : Check.that(
                                    "moduleGroup",
                                    whole,
                                    "Modules of the %s group in strings of %s on a %s bank.",
                                    group,
                                    layout.series(),
                                    need.nominalVoltage()));
        }
    }

    private void judgeCurrents(ArrayLayout layout, int count, List<Check> checks) {
        Current input = shortCircuit(layout.stringsOnEach().get(0));
        Current inputLimit = inputCurrentLimit();
        checks.add(Check.atMost(
                "inputCurrent",
                input,
                inputLimit,
                controller.kind() == ControllerKind.SHUNT
                        ? "Strings on the fullest controller: %s. When the bank is full it shorts them and carries %s, bright sun reckoned in; it takes %s."
                        : "Strings on the fullest controller: %s. They bring %s, bright sun reckoned in; it takes %s.",
                layout.stringsOnEach().get(0),
                input,
                inputLimit));
        Power inputPower = controller.maximumInputPower();
        if (inputPower != null) {
            Power connected = rated(layout.stringsOnEach().get(0), layout.series());
            checks.add(Check.atMost(
                    "inputPower",
                    connected,
                    inputPower,
                    "Strings on the fullest controller: %s, rated %s; it may be connected to %s.",
                    layout.stringsOnEach().get(0),
                    connected,
                    inputPower));
        }
        Ratio clipping = clipping(layout);
        checks.add(Check.shareAtMost(
                "clipping",
                clipping,
                policy.clippingLimit(),
                "With its output full it loses %s of the year's energy; %s is accepted.",
                clipping,
                policy.clippingLimit()));
        checks.add(Check.that(
                "controllersInParallel",
                count <= controller.mostInParallel(),
                "The array takes %s of them; at most %s may charge one bank together.",
                count,
                controller.mostInParallel()));
        Current charging = charging(layout, need.trueNominal());
        checks.add(Check.atMost(
                "bankChargeCurrent",
                charging,
                need.maximumChargeCurrent(),
                "In full sun %s flow into the bank; it takes %s.",
                charging,
                need.maximumChargeCurrent()));
    }

    private static void judgeEquipment(ChargerNeed need, ChargeController controller, List<Check> checks) {
        for (ControllerFunction function : need.functions()) {
            checks.add(Check.that(
                    "function",
                    controller.functions().contains(function),
                    "Asked for: %s; this controller has: %s.",
                    function,
                    controller.functions().isEmpty() ? "nothing besides charging" : controller.functions()));
        }
    }

    private void judgeFunctions(ArrayLayout layout, List<Check> checks) {
        judgeEquipment(need, controller, checks);
        if (asked(ControllerFunction.LOAD_OUTPUT)) {
            checks.add(Check.atMost(
                    "loadOutputCurrent",
                    need.dcLoadCurrent(),
                    controller.loadOutputCurrent(),
                    "The DC loads draw %s while they run; the load output carries %s and switches them off at low voltage.",
                    need.dcLoadCurrent(),
                    controller.loadOutputCurrent()));
        }
        if (asked(ControllerFunction.DIVERSION_CONTROL)) {
            Current diverted = diverted(rated(layout.stringsOnEach().get(0), layout.series()))
                    .current();
            Current rating = controller.outputCurrentIn(need.hottestAir());
            checks.add(Check.atMost(
                    "diversionCurrent",
                    diverted,
                    rating,
                    "The diversion load for the strings on the fullest controller draws %s; the controller switches %s.",
                    diverted,
                    rating));
        }
    }

    private Diversion diverted(Power source) {
        return Diversion.of(source, need.chargingVoltage(), policy);
    }

    /** Whether a function is asked for and there; where it is not there, that alone is told. */
    private boolean asked(ControllerFunction function) {
        return need.functions().contains(function) && controller.functions().contains(function);
    }
}
