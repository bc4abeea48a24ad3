package org.daybank.core.design.search;

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
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.sun.IrradianceDistribution;

/**
 * Every module with every charge controller of one path for one system nominal voltage, in the order of their minimum price.
 * Prices and rules that need no layout are compared with a limit as bare numbers, so that few of millions of pairs are
 * evaluated.
 */
final class ArrayCandidates {
    /** Bounds are lowered by this share, for rounding. */
    private static final double TOLERANCE = 1e-7;

    private final ChargePath path;
    private final ChargerNeed need;
    private final ArrayPolicy arrayPolicy;
    private final ChargerPolicy policy;
    private final IrradianceDistribution sunshine;
    private final ArrayNeed minimum;
    private final List<ModuleOption> modules = new ArrayList<>();
    private final List<ControllerOption> controllers = new ArrayList<>();
    private final double fullSunShare;
    private final double minimumFullSunWatts;

    /**
     * A module that yields energy in each month in which some is required.
     *
     * @param minimumModules number of modules, not rounded, that the minimum requirement takes
     */
    record ModuleOption(ModuleExtremes extremes, ModuleYield yield, double minimumModules) {
        PvModule module() {
            return extremes.module();
        }

        private double minimumPrice() {
            return minimumModules * module().price().minorUnits();
        }

        private double fullSunWatts(double count, Ratio whenNew) {
            return ArrayOffer.fullSunPower(module().power().times(count), module(), whenNew)
                    .watts();
        }
    }

    /** A controller with the minimum price of the number that any module takes. */
    private record ControllerOption(ChargeController controller, double outputWatts, long minimumPrice) {}

    /** Receives the pairs that may be cheap enough. */
    interface Visitor {
        /** Evaluates a pair. */
        void visit(ModuleOption module, ChargeController controller);
    }

    /**
     * Sorts modules and controllers.
     *
     * @param need requirements of the controllers, the charging limit of the bank left open
     * @param minimum what every system requires of its array
     * @param moduleYields of the modules on this path
     * @param suitable controllers of this path that {@linkplain ChargerFit#suits suit} the requirements
     */
    ArrayCandidates(
            ChargePath path,
            ChargerNeed need,
            ArrayNeed minimum,
            List<ModuleYield> moduleYields,
            List<ChargeController> suitable,
            ModuleYields yields,
            ArrayPolicy arrayPolicy,
            ChargerPolicy policy) {
        this.path = path;
        this.need = need;
        this.minimum = minimum;
        this.arrayPolicy = arrayPolicy;
        this.policy = policy;
        this.sunshine = yields.sunshine();
        double watts = Double.MAX_VALUE;
        for (ModuleYield yield : moduleYields) {
            double exact = ArraySize.exactModules(minimum, yield, arrayPolicy);
            if (exact <= ArraySize.MOST_MODULES) {
                ModuleOption option = new ModuleOption(yields.extremes(yield.module()), yield, exact);
                modules.add(option);
                watts = Math.min(watts, option.fullSunWatts(exact, arrayPolicy.whenNew()));
            }
        }
        modules.sort(Comparator.comparingDouble(ModuleOption::minimumPrice));
        this.minimumFullSunWatts = watts;
        this.fullSunShare = minimumFullSunShare();
        for (ChargeController controller : suitable) {
            double outputWatts = ChargerFit.ratedOutput(need, controller).watts();
            double count = minimumCount(outputWatts, watts);
            if (count <= controller.mostInParallel()) {
                controllers.add(new ControllerOption(controller, outputWatts, (long)
                        (count * controller.price().minorUnits())));
            }
        }
        controllers.sort(Comparator.comparingLong(ControllerOption::minimumPrice));
    }

    /** The minimum share of full sun at which the outputs may be full without more being clipped than the policy accepts. */
    private double minimumFullSunShare() {
        double low = 0;
        double high = 2;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            boolean accepted = ChargerFit.clipping(sunshine, middle).compareTo(policy.clippingLimit()) <= 0;
            if (accepted) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** The minimum number of controllers that tracked modules take; on the direct path clipping sets none. */
    private double minimumCount(double outputWatts, double fullSunWatts) {
        if (path == ChargePath.DIRECT) {
            return 1;
        }
        return Math.max(1, Math.ceil(fullSunWatts * fullSunShare / outputWatts * (1 - TOLERANCE) - TOLERANCE));
    }

    /** Whether there is no pair. */
    boolean isEmpty() {
        return modules.isEmpty() || controllers.isEmpty();
    }

    /** The minimum current into the bank in full sun, in amperes. */
    double minimumChargingAmperes() {
        return path == ChargePath.DIRECT
                ? 0
                : minimumFullSunWatts
                        * fullSunShare
                        * (1 - TOLERANCE)
                        / need.trueNominal().volts();
    }

    /** A lower bound of the ratio of a requirement to the minimum requirement. */
    private double minimumRatio(ArrayNeed required) {
        double ratio = Double.MAX_VALUE;
        for (int month = 0; month < 12; month++) {
            double floor = minimum.atBank(month, path).wattHours();
            if (floor > 0) {
                ratio = Math.min(ratio, required.atBank(month, path).wattHours() / floor);
            }
        }
        return ratio == Double.MAX_VALUE ? 0 : ratio * (1 - TOLERANCE);
    }

    /** The minimum price of modules and controllers, in minor units. */
    double minimumPrice(ArrayNeed required) {
        return minimumRatio(required) * modules.get(0).minimumPrice()
                + controllers.get(0).minimumPrice();
    }

    /**
     * Visits every pair that may cost less than a limit.
     *
     * @param limit in minor units; it may fall during the visit
     */
    void visitCheaperThan(ArrayNeed required, LongSupplier limit, Visitor visitor) {
        double ratio = minimumRatio(required);
        long cheapestController = controllers.get(0).minimumPrice();
        for (ModuleOption option : modules) {
            if (ratio * option.minimumPrice() + cheapestController >= limit.getAsLong()) {
                break;
            }
            double exact = ArraySize.exactModules(required, option.yield(), arrayPolicy);
            long price = (long) Math.ceil(exact * (1 - TOLERANCE) - TOLERANCE)
                    * option.module().price().minorUnits();
            if (exact > ArraySize.MOST_MODULES || price + cheapestController >= limit.getAsLong()) {
                continue;
            }
            double watts = option.fullSunWatts(exact, arrayPolicy.whenNew());
            for (ControllerOption offered : controllers) {
                if (price + offered.minimumPrice() >= limit.getAsLong()) {
                    break;
                }
                ChargeController controller = offered.controller();
                double count = minimumCount(offered.outputWatts(), watts);
                if (count <= controller.mostInParallel()
                        && price + ((long) count) * controller.price().minorUnits() < limit.getAsLong()
                        && ChargerFit.permitsString(need, option.extremes(), controller, policy)) {
                    visitor.visit(option, controller);
                }
            }
        }
    }
}
