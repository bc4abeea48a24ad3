package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/**
 * One controller held against one module and a need: how many it takes, the strings on each, and every rule with its
 * margin. Where no layout keeps every rule, the checks are those of the layout that comes nearest.
 *
 * @param product model of the controller
 * @param controller its data sheet
 * @param count how many of it
 * @param array modules in series and parallel
 * @param chargingCurrent what flows into the bank in full sun at its nominal voltage, no more than the controllers give
 * @param chargingCurrentAtAbsorption the same at the absorption voltage
 * @param clipping share of the year's energy lost because the output is full
 * @param clippedEnergy the same in a year of 365 days
 * @param selfConsumptionEnergy what the controllers take from the bank in a year
 * @param yearlyEnergy what the bank gains in a year, its modules aged: their yield less what clipping loses and the controllers
 *     take; a full bank will not take all of it
 * @param energyAgainstBest yearly energy over that of the controller that brings the most; absent until it is held against
 *     others
 * @param diversion the load that takes what the bank cannot; absent when diversion is not asked for
 * @param price of the controllers; the modules' price stands with the array
 * @param checks every rule, kept or broken
 */
@RecordBuilder
public record ChargerFit(
        String product,
        @NotRepeated ChargeController controller,
        int count,
        ArrayLayout array,
        Current chargingCurrent,
        Current chargingCurrentAtAbsorption,
        Ratio clipping,
        Energy clippedEnergy,
        Energy selfConsumptionEnergy,
        Energy yearlyEnergy,
        @Nullable Ratio energyAgainstBest,
        @Nullable Diversion diversion,
        Money price,
        List<Check> checks)
        implements Assessment, ChargerFitBuilder.With {
    /** Keeps a copy. */
    public ChargerFit {
        checks = List.copyOf(checks);
    }

    /** The same held against further rules. */
    public ChargerFit and(List<Check> further) {
        return withChecks(Stream.concat(checks.stream(), further.stream()).toList());
    }

    /** Price of the controllers and the modules. */
    public Money priceWithArray() {
        return price.plus(array.price());
    }

    /** What all controllers draw around the clock. */
    public Power selfConsumption() {
        return controller.selfConsumption().times(count);
    }

    /**
     * Returns a controller checked with the modules and the need: the cheapest layout that keeps every rule. Of an exact
     * number of modules every layout of whole strings is checked; where there is none, that of the nearest number that
     * whole strings make.
     */
    public static ChargerFit of(ChargerNeed need, ArrayOffer offer, ChargeController controller, ChargerPolicy policy) {
        ChargerRules rules = new ChargerRules(need, offer, controller, policy);
        return offer.exact() ? exactly(offer.modulesFor(controller), rules) : covering(rules);
    }

    private static ChargerFit exactly(int modules, ChargerRules rules) {
        Check count = rules.moduleCount();
        for (int distance = 0; distance < modules; distance++) {
            Optional<ChargerFit> fewer = layout(modules - distance, rules);
            Optional<ChargerFit> nearest = fewer.isPresent() ? fewer : layout(modules + distance, rules);
            if (nearest.isPresent()) {
                return nearest.get().and(List.of(count));
            }
        }
        return rules.judge(rules.leastInSeries()).and(List.of(count));
    }

    /** The best layout of exactly so many modules in strings of a length that the voltages allow. */
    private static Optional<ChargerFit> layout(int modules, ChargerRules rules) {
        int least = rules.leastInSeries();
        return IntStream.rangeClosed(least, Math.max(least, rules.mostInSeries()))
                .filter(series -> modules % series == 0)
                .mapToObj(series -> rules.judge(series, modules / series))
                .reduce((best, next) -> better(next, best) ? next : best);
    }

    private static ChargerFit covering(ChargerRules rules) {
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

    /**
     * Returns whether a controller passes the rules that no module and no size of the bank changes: nominal voltage, chemistry
     * and required functions. Where it does not, no array makes it fit.
     */
    public static boolean suits(ChargerNeed need, ChargeController controller) {
        return ChargerRules.ofController(need, controller).stream().allMatch(Check::passed);
    }

    /**
     * Returns whether a string of some length charges in the hottest sun and stays within the voltage limits on the coldest
     * morning. Where none does, no number of the module fits.
     */
    public static boolean permitsString(
            ChargerNeed need, ModuleExtremes extremes, ChargeController controller, ChargerPolicy policy) {
        StringLengths lengths = new StringLengths(need, extremes, controller, policy);
        return lengths.minimum() <= lengths.maximum();
    }

    /** Returns the power that one controller gives in the hottest air at the bank's nominal voltage. */
    public static Power ratedOutput(ChargerNeed need, ChargeController controller) {
        return ChargerRules.ratedOutput(need, controller);
    }

    /**
     * Returns the share of the year's energy that is lost where the output of the controllers is full.
     *
     * @param fullSunShare output of the controllers over the power of the array in full sun
     */
    public static Ratio clipping(IrradianceDistribution sunshine, double fullSunShare) {
        return ChargerRules.clipping(sunshine, fullSunShare);
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
        return fit.checks().stream().filter(check -> !check.passed()).count();
    }
}
