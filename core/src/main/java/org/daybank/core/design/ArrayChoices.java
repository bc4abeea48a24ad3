package org.daybank.core.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongSupplier;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sun.IrradianceDistribution;

/**
 * Every module with every controller of one path for one bus, in the order of what the two cost at the least. Prices and rules
 * that need no layout are held against a limit in bare numbers, so that of millions of pairs a few are judged.
 */
final class ArrayChoices {
    /** A bound is this much lower than reckoned, for rounding. */
    private static final double CLOSE = 1e-7;

    private final ChargerNeed need;
    private final ArrayPolicy arrayPolicy;
    private final ChargerPolicy policy;
    private final IrradianceDistribution sunshine;
    private final ArrayNeed least;
    private final List<Modules> modules = new ArrayList<>();
    private final List<Controllers> controllers = new ArrayList<>();
    private final double fullSunShare;
    private final double leastFullSunWatts;

    /** A module that brings something each month in which something is asked. */
    record Modules(ModuleExtremes extremes, ModuleYield yield, double exactAtLeast) {
        PvModule module() {
            return extremes.module();
        }

        private double priceAtLeast() {
            return exactAtLeast * module().price().minorUnits();
        }

        /** What so many give in full sun through a controller without loss, per module: dirt and the like taken off. */
        private double fullSunWatts(double count, Ratio whenNew) {
            return count * module().power().watts() * module().bifacialGain().onePlus() * whenNew.fraction();
        }
    }

    /** A controller with the fewest of it that any module asks for. */
    private record Controllers(ChargeController controller, double outputWatts, long atLeast) {}

    /** What to do with a pair that may be cheap enough. */
    interface Visitor {
        /** Looks at a pair. */
        void look(Modules modules, ChargeController controller);
    }

    /**
     * Sorts modules and controllers.
     *
     * @param need what controllers must do, the bank's own limit aside
     * @param least what every system asks of its array at the least
     * @param yields of the modules on this path
     * @param offered controllers of this path that the bus, the chemistry and the functions leave
     */
    ArrayChoices(
            ChargerNeed need,
            ArrayNeed least,
            List<ModuleYield> yields,
            List<ChargeController> offered,
            ModuleYields known,
            ArrayPolicy arrayPolicy,
            ChargerPolicy policy) {
        this.need = need;
        this.least = least;
        this.arrayPolicy = arrayPolicy;
        this.policy = policy;
        this.sunshine = known.sunshine();
        double watts = Double.MAX_VALUE;
        for (ModuleYield yield : yields) {
            double exact = ArraySize.exactModules(least, yield, arrayPolicy);
            if (exact <= ArraySize.MOST_MODULES) {
                Modules choice = new Modules(known.extremes(yield.module()), yield, exact);
                modules.add(choice);
                watts = Math.min(watts, choice.fullSunWatts(exact, arrayPolicy.whenNew()));
            }
        }
        modules.sort(Comparator.comparingDouble(Modules::priceAtLeast));
        this.leastFullSunWatts = watts;
        this.fullSunShare = fullSunShare();
        for (ChargeController controller : offered) {
            double outputWatts = controller
                    .outputCurrentIn(need.hottestAir())
                    .times(need.trueNominal())
                    .watts();
            double count = count(outputWatts, watts);
            if (count <= controller.mostInParallel()) {
                controllers.add(new Controllers(controller, outputWatts, (long)
                        (count * controller.price().minorUnits())));
            }
        }
        controllers.sort(Comparator.comparingLong(Controllers::atLeast));
    }

    /** The least share of full sun at which an output may be full without more being lost than is accepted. */
    private double fullSunShare() {
        double low = 0;
        double high = 2;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            boolean accepted = sunshine.shareAbove(Irradiance.wattsPerSquareMetre(1000 * middle))
                            .compareTo(policy.clippingLimit())
                    <= 0;
            if (accepted) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** Controllers that tracked modules ask for at the least; those that pass the current through are not held to it. */
    private double count(double outputWatts, double fullSunWatts) {
        if (direct()) {
            return 1;
        }
        return Math.max(1, Math.ceil(fullSunWatts * fullSunShare / outputWatts * (1 - CLOSE) - CLOSE));
    }

    private boolean direct() {
        return !modules.isEmpty() && modules.get(0).yield().path() == ChargePath.DIRECT;
    }

    /** Whether there is anything to choose from. */
    boolean empty() {
        return modules.isEmpty() || controllers.isEmpty();
    }

    /** The current that flows into the bank in full sun at the least, in amperes. */
    double leastChargingAmperes() {
        return direct()
                ? 0
                : leastFullSunWatts
                        * fullSunShare
                        * (1 - CLOSE)
                        / need.trueNominal().volts();
    }

    /** How many times what every system asks at the least is asked here, at the least. */
    private double times(ArrayNeed asked) {
        double times = Double.MAX_VALUE;
        ChargePath path = modules.get(0).yield().path();
        for (int month = 0; month < 12; month++) {
            double floor = least.atBank(month, path).wattHours();
            if (floor > 0) {
                times = Math.min(times, asked.atBank(month, path).wattHours() / floor);
            }
        }
        return times == Double.MAX_VALUE ? 0 : times * (1 - CLOSE);
    }

    /** What modules and controllers cost at the least, in minor units. */
    double least(ArrayNeed asked) {
        return times(asked) * modules.get(0).priceAtLeast() + controllers.get(0).atLeast();
    }

    /**
     * Shows every pair that may cost less than a limit.
     *
     * @param limit in minor units; it may fall while pairs are looked at
     */
    void under(ArrayNeed asked, LongSupplier limit, Visitor visitor) {
        double times = times(asked);
        long cheapestController = controllers.get(0).atLeast();
        for (Modules choice : modules) {
            if (times * choice.priceAtLeast() + cheapestController >= limit.getAsLong()) {
                break;
            }
            double exact = ArraySize.exactModules(asked, choice.yield(), arrayPolicy);
            long price = (long) Math.ceil(exact * (1 - CLOSE) - CLOSE)
                    * choice.module().price().minorUnits();
            if (exact > ArraySize.MOST_MODULES || price + cheapestController >= limit.getAsLong()) {
                continue;
            }
            double watts = choice.fullSunWatts(exact, arrayPolicy.whenNew());
            for (Controllers offered : controllers) {
                if (price + offered.atLeast() >= limit.getAsLong()) {
                    break;
                }
                ChargeController controller = offered.controller();
                double count = count(offered.outputWatts(), watts);
                if (count <= controller.mostInParallel()
                        && price + ((long) count) * controller.price().minorUnits() < limit.getAsLong()
                        && mayString(choice, controller)) {
                    visitor.look(choice, controller);
                }
            }
        }
    }

    /** Whether some string charges in the hottest sun and is withstood on the coldest morning. */
    private boolean mayString(Modules choice, ChargeController controller) {
        if (direct() || controller.kind() == ControllerKind.STEP_UP_MPPT) {
            return true;
        }
        Voltage asked = need.resolved().chargingVoltage().plus(controller.headroom());
        Voltage input = controller
                .maximumInputVoltage()
                .times(policy.openCircuitReserve().complement());
        Voltage system = choice.module().systemVoltage();
        double fewest = Math.max(1, Math.ceil(asked.dividedBy(choice.extremes().hottestMaximumPower()) - CLOSE));
        return choice.extremes().coldestOpenCircuit((int) fewest).volts()
                <= Math.min(input.volts(), system.volts()) * (1 + CLOSE);
    }
}
