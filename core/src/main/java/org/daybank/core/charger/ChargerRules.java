package org.daybank.core.charger;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.array.ArraySize;
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

    /** Judges the fewest strings of a length that hold the modules of the offer. */
    ChargerFit judge(int series) {
        int modules = Math.max(1, offer.modulesFor(controller));
        return judge(series, 1 + (modules - 1) / series);
    }

    /** Judges so many strings of a length, on as few controllers as carry them. */
    ChargerFit judge(int series, int strings) {
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
                charging(layout, need.resolved().chargingVoltage()),
                clipping,
                clipped,
                own,
                offered.minus(clipped).minus(own),
                null,
                need.functions().contains(ControllerFunction.DIVERSION_CONTROL) ? diverted(layout.power()) : null,
                controller.price().times(count),
                checks);
    }

    /**
     * Returns the rule that exactly the modules of the offer can be connected, with the nearest numbers that can where they
     * cannot.
     */
    Check moduleCount() {
        int modules = offer.modulesFor(controller);
        int below = 0;
        int above = Integer.MAX_VALUE;
        boolean carried = false;
        for (int series = leastInSeries(); series <= Math.max(leastInSeries(), mostInSeries()); series++) {
            int mostStrings = mostStrings(series);
            carried |= modules % series == 0 && modules / series <= mostStrings;
            below = Math.max(below, series * Math.min(mostStrings, (modules - 1) / series));
            int more = modules / series + 1;
            above = more <= mostStrings ? Math.min(above, series * more) : above;
        }
        Check check = Check.that(
                ControllerRule.MODULE_COUNT,
                carried,
                value("modules", modules),
                value("mostInParallel", controller.mostInParallel()),
                value("below", below),
                value("above", above));
        if (carried || (below > 0 && above < Integer.MAX_VALUE)) {
            return check;
        }
        return check.variant(below > 0 ? "fewer" : above < Integer.MAX_VALUE ? "more" : "none");
    }

    /** Returns how many strings of a length all controllers together carry; none when the voltages of one string do not fit. */
    private int mostStrings(int series) {
        List<Check> voltages = new ArrayList<>();
        judgeStrings(ArrayLayout.shared(offer.module(), series, 1, 1), voltages);
        return voltages.stream().allMatch(Check::passed) ? withinLimits(series) * controller.mostInParallel() : 0;
    }

    /** Returns how many strings one controller is given: as many as it carries, at least one. */
    private int stringsOnOne(int series) {
        return Math.max(1, withinLimits(series));
    }

    /** Returns how many strings one controller carries by input current, input power, diversion and clipping. */
    private int withinLimits(int series) {
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
        int strings = (int) Math.min(ArraySize.MOST_MODULES, Math.floor(most + 1e-12));
        while (strings > 0
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
        Current input = controller.resolved().maximumInputCurrent();
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
                ControllerRule.BUS_VOLTAGE,
                controller.busVoltages().contains(need.nominalVoltage()),
                value("nominalVoltage", need.nominalVoltage()),
                value("busVoltages", controller.busVoltages())));
        checks.add(Check.that(
                ControllerRule.CHEMISTRY,
                controller.chemistries().contains(need.chemistry()),
                value("chemistry", need.chemistry()),
                value("chemistries", controller.chemistries())));
    }

    private void judgeStrings(ArrayLayout layout, List<Check> checks) {
        Voltage coldest = extremes().coldestOpenCircuit(layout.series());
        checks.add(Check.atMost(
                ControllerRule.COLDEST_OPEN_CIRCUIT_VOLTAGE,
                coldest,
                inputLimit(),
                value("series", layout.series()),
                value("openCircuitReserve", policy.openCircuitReserve())));
        checks.add(Check.atMost(
                ControllerRule.SYSTEM_VOLTAGE,
                coldest,
                offer.module().systemVoltage(),
                value("series", layout.series())));
        Voltage hottest = extremes().hottestMaximumPower(layout.series());
        boolean stepUp = controller.kind() == ControllerKind.STEP_UP_MPPT;
        if (stepUp || controller.minimumInputVoltage().compareTo(Voltage.ZERO) > 0) {
            checks.add(Check.atLeast(
                    ControllerRule.LOWEST_INPUT_VOLTAGE,
                    hottest,
                    controller.minimumInputVoltage(),
                    value("series", layout.series())));
        }
        if (stepUp) {
            checks.add(Check.atMost(
                    ControllerRule.OPEN_CIRCUIT_BELOW_BANK,
                    coldest,
                    need.resolved().lowestVoltage(),
                    value("series", layout.series())));
        } else {
            checks.add(Check.atLeast(
                    ControllerRule.HOTTEST_MAXIMUM_POWER_VOLTAGE,
                    hottest,
                    operatingLimit(),
                    value("series", layout.series())));
        }
        if (direct()) {
            Voltage group = offer.module().nominalGroup();
            boolean whole = group != null
                    && layout.series() * group.volts() == need.nominalVoltage().volts();
            checks.add(
                    group == null
                            ? Check.that(ControllerRule.MODULE_GROUP, false).variant("noGroup")
                            : Check.that(
                                    ControllerRule.MODULE_GROUP,
                                    whole,
                                    value("group", group),
                                    value("series", layout.series()),
                                    value("nominalVoltage", need.nominalVoltage())));
        }
    }

    private void judgeCurrents(ArrayLayout layout, int count, List<Check> checks) {
        Current input = shortCircuit(layout.stringsOnEach().get(0));
        Current inputLimit = inputCurrentLimit();
        Check current = Check.atMost(
                ControllerRule.INPUT_CURRENT,
                input,
                inputLimit,
                value("stringsOnEach", layout.stringsOnEach().get(0)));
        checks.add(controller.kind() == ControllerKind.SHUNT ? current.variant("shunt") : current);
        Power inputPower = controller.maximumInputPower();
        if (inputPower != null) {
            Power connected = rated(layout.stringsOnEach().get(0), layout.series());
            checks.add(Check.atMost(
                    ControllerRule.INPUT_POWER,
                    connected,
                    inputPower,
                    value("stringsOnEach", layout.stringsOnEach().get(0))));
        }
        Ratio clipping = clipping(layout);
        checks.add(Check.shareAtMost(ControllerRule.CLIPPING, clipping, policy.clippingLimit()));
        checks.add(Check.that(
                ControllerRule.CONTROLLERS_IN_PARALLEL,
                count <= controller.mostInParallel(),
                value("count", count),
                value("mostInParallel", controller.mostInParallel())));
        Current charging = charging(layout, need.trueNominal());
        checks.add(Check.atMost(ControllerRule.BANK_CHARGE_CURRENT, charging, need.maximumChargeCurrent()));
    }

    private static void judgeEquipment(ChargerNeed need, ChargeController controller, List<Check> checks) {
        for (ControllerFunction function : need.functions()) {
            checks.add(Check.that(
                    ControllerRule.FUNCTION,
                    controller.functions().contains(function),
                    value("function", function),
                    value(
                            "functions",
                            controller.functions().isEmpty() ? "nothing besides charging" : controller.functions())));
        }
    }

    private void judgeFunctions(ArrayLayout layout, List<Check> checks) {
        judgeEquipment(need, controller, checks);
        if (asked(ControllerFunction.LOAD_OUTPUT)) {
            checks.add(Check.atMost(
                    ControllerRule.LOAD_OUTPUT_CURRENT,
                    need.dcLoadCurrent(),
                    controller.resolved().loadOutputCurrent()));
        }
        if (asked(ControllerFunction.DIVERSION_CONTROL)) {
            Current diverted = diverted(rated(layout.stringsOnEach().get(0), layout.series()))
                    .current();
            Current rating = controller.outputCurrentIn(need.hottestAir());
            checks.add(Check.atMost(ControllerRule.DIVERSION_CURRENT, diverted, rating));
        }
    }

    private Diversion diverted(Power source) {
        return Diversion.of(source, need.resolved().chargingVoltage(), policy);
    }

    /** Whether a function is asked for and there; where it is not there, that alone is told. */
    private boolean asked(ControllerFunction function) {
        return need.functions().contains(function) && controller.functions().contains(function);
    }
}
