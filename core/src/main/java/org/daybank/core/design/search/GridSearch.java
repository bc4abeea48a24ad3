package org.daybank.core.design.search;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignRule;
import org.daybank.core.design.ModuleSelection;
import org.daybank.core.inverter.GridArray;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.GridInverterRule;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.GridService;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.MicroinverterSelection;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.inverter.StringInverterSelection;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rule;
import org.jspecify.annotations.Nullable;

/** Finds the cheapest pair of a module and an inverter that feeds the grid: with a better inverter fewer modules are needed. */
public final class GridSearch {
    /** Number of modules that are evaluated with inverters none of which suits the grid. */
    private static final long MODULES_WITHOUT_INVERTER = 20;

    /** Rules of the grid alone, which no module changes. */
    private static final Set<Rule> RULES_OF_THE_GRID =
            Set.of(GridInverterRule.OUTPUT_VOLTAGE, GridInverterRule.FREQUENCY, GridInverterRule.PHASES);

    private static final Comparator<GridCandidate> CHEAPEST_FIRST = Comparator.comparing(GridCandidate::price)
            .thenComparing(candidate -> candidate.module().model())
            .thenComparing(candidate -> !candidate.inStrings())
            .thenComparing(GridCandidate::product);

    private final DesignBrief brief;
    private final Catalog catalog;
    private final ModuleYields yields;
    private final Energy yearlyUse;
    private final DeliveryRule delivery;

    /**
     * The result of the search.
     *
     * @param cheapest of the pairs that pass every rule; absent where there is none
     * @param nearest of the pairs that do not, among those evaluated; absent where there is none
     */
    public record Result(
            @Nullable GridCandidate cheapest, @Nullable GridCandidate nearest) {}

    /** A module with a lower bound of the price of the number required, in minor units. */
    private record PricedModule(PvModule module, long minimumPrice) {}

    /**
     * Creates a search.
     *
     * @param yields of modules at the site of the brief
     * @param yearlyUse energy that the loads use in a year
     */
    public GridSearch(DesignBrief brief, Catalog catalog, ModuleYields yields, Energy yearlyUse) {
        this.brief = brief;
        this.catalog = catalog;
        this.yields = yields;
        this.yearlyUse = yearlyUse;
        this.delivery = new DeliveryRule(catalog, brief.wishes());
    }

    /** Evaluates the pairs that may be the cheapest. */
    public Result search() {
        List<GridInverter> every = Stream.<GridInverter>concat(
                        catalog.stringInverters().stream(), catalog.microinverters().stream())
                .sorted(Comparator.comparing(GridInverter::price))
                .toList();
        List<GridInverter> suitable = suitable(every);
        List<GridInverter> inverters = suitable.isEmpty() ? every : suitable;
        List<PricedModule> modules = catalog.modules().stream()
                .map(module -> new PricedModule(
                        module, modules(module, 1) * module.price().minorUnits()))
                .sorted(Comparator.comparingLong(PricedModule::minimumPrice))
                .limit(suitable.isEmpty() ? MODULES_WITHOUT_INVERTER : Long.MAX_VALUE)
                .toList();
        GridCandidate best = null;
        GridCandidate nearest = null;
        for (PricedModule module : modules) {
            for (GridInverter inverter : inverters) {
                // in the order of price: the following cost no less
                if (best != null
                        && module.minimumPrice() + inverter.price().minorUnits()
                                > best.price().minorUnits()) {
                    break;
                }
                GridCandidate candidate = candidate(module.module(), inverter);
                if (candidate.fits()) {
                    best = best == null || CHEAPEST_FIRST.compare(candidate, best) < 0 ? candidate : best;
                } else if (nearest == null
                        || NearestRejection.NEAREST_FIRST.compare(candidate.rejection(), nearest.rejection()) < 0) {
                    nearest = candidate;
                }
            }
        }
        return new Result(best, nearest);
    }

    /** The inverters that pass the rules of the grid, which any module shows. */
    private List<GridInverter> suitable(List<GridInverter> every) {
        if (catalog.modules().isEmpty()) {
            return List.of();
        }
        GridArray any = array(yields.extremes(catalog.modules().get(0)), 1);
        return every.stream()
                .filter(inverter -> evaluate(any, inverter).checks().stream()
                        .allMatch(check -> check.passed() || !RULES_OF_THE_GRID.contains(check.rule())))
                .toList();
    }

    private GridCandidate candidate(PvModule module, GridInverter inverter) {
        return sufficient(yields.extremes(module), inverter.efficiency(), array -> evaluate(array, inverter));
    }

    private GridCandidate evaluate(GridArray array, GridInverter inverter) {
        return inverter instanceof StringInverter strings
                ? new GridCandidate(array, evaluate(array, strings), null)
                : new GridCandidate(array, null, evaluate(array, (Microinverter) inverter));
    }

    private StringInverterFit evaluate(GridArray array, StringInverter inverter) {
        return delivery.applied(StringInverterFit.of(
                        service(), array, inverter, brief.policy().grid()))
                .and(delivery.modules(array.module().model(), array.modules()));
    }

    private MicroinverterFit evaluate(GridArray array, Microinverter inverter) {
        return delivery.applied(MicroinverterFit.of(
                        service(), array, inverter, brief.policy().grid()))
                .and(delivery.modules(array.module().model(), array.modules()));
    }

    /** The fewest modules that yield the required energy through an inverter, its clipping included. */
    private GridCandidate sufficient(
            ModuleExtremes extremes, Ratio efficiency, Function<GridArray, GridCandidate> evaluate) {
        GridCandidate candidate = evaluate.apply(array(extremes, modules(extremes.module(), efficiency.fraction())));
        int needed = modules(extremes.module(), candidate.energyShare());
        while (candidate.fits() && needed > candidate.array().modules()) {
            candidate = evaluate.apply(array(extremes, needed));
            needed = modules(extremes.module(), candidate.energyShare());
        }
        return candidate;
    }

    private GridArray array(ModuleExtremes extremes, int modules) {
        return new GridArray(extremes, modules, brief.policy().array().whenNew(), yields.sunshine());
    }

    private GridService service() {
        return new GridService(
                brief.service(), brief.resolved().site().resolved().recordHigh());
    }

    private int modules(PvModule module, double energyShare) {
        Integer fixed = brief.grid().modules();
        Power power = brief.grid().power();
        double count = fixed != null
                ? fixed
                : power != null
                        ? power.dividedBy(module.power())
                        : yearlyUse.wattHours()
                                * brief.grid().coverage().fraction()
                                / (yearly(daily(module, 1)).wattHours() * energyShare);
        return (int) Math.max(1, Math.min(GridArray.MOST_MODULES, Math.ceil(count - 1e-9)));
    }

    private List<Energy> daily(PvModule module, double factor) {
        ModuleYield yield = yields.tracking(module);
        return Arrays.stream(Month.values())
                .map(month -> yield.in(month).times(factor))
                .toList();
    }

    /** Returns the energy of a pair into the grid on the mean day of each month, from January. */
    public List<Energy> dailyYield(GridCandidate candidate) {
        return daily(candidate.module(), candidate.array().modules() * candidate.energyShare());
    }

    /** Returns the energy of a year by the mean days of its months. */
    public static Energy yearly(List<Energy> daily) {
        double sum = 0;
        for (Month month : Month.values()) {
            sum += daily.get(month.getValue() - 1).wattHours() * MonthlyClimate.daysIn(month);
        }
        return Energy.wattHours(sum);
    }

    /** Returns the kinds of product that the catalogue lacks or, where it has all, the rules that the nearest pair fails. */
    public List<Check> failedChecks(@Nullable GridCandidate nearest) {
        List<Check> lacking = new ArrayList<>();
        if (catalog.modules().isEmpty()) {
            lacking.add(Check.that(DesignRule.ARRAY, false).variant("noModules"));
        }
        if (catalog.stringInverters().isEmpty() && catalog.microinverters().isEmpty()) {
            lacking.add(Check.that(DesignRule.INVERTER, false).variant("noGridInverters"));
        }
        return nearest == null ? lacking : NearestRejection.failedChecks(nearest.rejection());
    }

    /** Returns every inverter of the catalogue, ranked or rejected, with the array of a pair. */
    public GridInverterSelection inverters(GridCandidate candidate) {
        GridArray array = candidate.array();
        return new GridInverterSelection(
                array.extremes(),
                StringInverterSelection.of(catalog.stringInverters().stream()
                        .map(inverter -> evaluate(array, inverter))
                        .toList()),
                MicroinverterSelection.of(catalog.microinverters().stream()
                        .map(inverter -> evaluate(array, inverter))
                        .toList()));
    }

    /** Returns every module of the catalogue, ranked or rejected, with the inverter of a pair. */
    public ModuleSelection modules(GridCandidate candidate) {
        GridInverter inverter = candidate.inverter();
        return ModuleSelection.of(catalog.modules().stream()
                .map(module -> candidate(module, inverter))
                .map(option -> new ModuleSelection.Choice(
                        option.module().model(),
                        option.array().modules(),
                        option.product(),
                        option.count(),
                        option.price(),
                        option.checks()))
                .toList());
    }

    /** Returns the price of the same module with the cheapest inverter of the other kind that fits. */
    public Optional<Money> priceOfOtherKind(GridCandidate candidate) {
        List<? extends GridInverter> others =
                candidate.inStrings() ? catalog.microinverters() : catalog.stringInverters();
        return others.stream()
                .map(inverter -> candidate(candidate.module(), inverter))
                .filter(GridCandidate::fits)
                .map(GridCandidate::price)
                .min(Comparator.naturalOrder());
    }
}
