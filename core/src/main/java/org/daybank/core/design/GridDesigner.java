package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.time.Month;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.grid.FeedingArray;
import org.daybank.core.grid.GridBill;
import org.daybank.core.grid.GridFlows;
import org.daybank.core.grid.GridHours;
import org.daybank.core.grid.Tariff;
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
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rule;
import org.jspecify.annotations.Nullable;

/** The job for an array that feeds the grid without a bank: how many modules, and the inverters that take them. */
final class GridDesigner {
    /** Modules that are held against inverters none of which feeds the grid. */
    private static final long MOST_FOR_NOTHING = 20;

    /** Rules of the grid alone, whatever the modules are. */
    private static final Set<Rule> OF_THE_GRID =
            Set.of(GridInverterRule.OUTPUT_VOLTAGE, GridInverterRule.FREQUENCY, GridInverterRule.PHASES);

    private static final Comparator<GridOption> CHEAPEST_FIRST = Comparator.comparing(GridOption::price)
            .thenComparing(option -> option.module().model())
            .thenComparing(option -> !option.inStrings())
            .thenComparing(GridOption::product);

    private final DesignBrief brief;
    private final Catalog catalog;
    private final LoadProfile loads;
    private final MonthlySun sun;
    private final IrradianceDistribution sunshine;
    private final ModuleYields yields;
    private final Energy yearlyUse;
    private final Supply supply;

    GridDesigner(DesignBrief brief, Catalog catalog) {
        this.brief = brief;
        this.catalog = catalog;
        this.loads = brief.profile();
        this.supply = new Supply(catalog, brief.wishes());
        this.sun = ArraySun.of(brief, loads);
        this.sunshine = ArraySun.spread(brief, sun.plane());
        this.yields = new ModuleYields(
                brief.resolved().site(), sunshine, brief.policy().array());
        this.yearlyUse = yearly(
                loads.budget().months().stream().map(MonthBudget::atLoads).toList());
    }

    /** The cheapest pair of a module and an inverter: through a better inverter fewer modules bring the same. */
    SystemDesign design() {
        List<GridInverter> every = Stream.<GridInverter>concat(
                        catalog.stringInverters().stream(), catalog.microinverters().stream())
                .sorted(Comparator.comparing(GridInverter::price))
                .toList();
        List<GridInverter> feeding = feeding(every);
        List<GridInverter> inverters = feeding.isEmpty() ? every : feeding;
        List<Priced> modules = catalog.modules().stream()
                .map(module ->
                        new Priced(module, modules(module, 1) * module.price().minorUnits()))
                .sorted(Comparator.comparingLong(Priced::atLeast))
                .limit(feeding.isEmpty() ? MOST_FOR_NOTHING : Long.MAX_VALUE)
                .toList();
        GridOption best = null;
        GridOption nearest = null;
        for (Priced module : modules) {
            for (GridInverter inverter : inverters) {
                // in the order of price: what follows costs no less
                if (best != null
                        && module.atLeast() + inverter.price().minorUnits()
                                > best.price().minorUnits()) {
                    break;
                }
                GridOption option = option(module.module(), inverter);
                if (option.fits()) {
                    best = best == null || CHEAPEST_FIRST.compare(option, best) < 0 ? option : best;
                } else if (nearest == null
                        || NearestMiss.NEAREST_FIRST.compare(option.rejection(), nearest.rejection()) < 0) {
                    nearest = option;
                }
            }
        }
        return best == null ? incomplete(nearest) : complete(best);
    }

    /** A module, and what so few of it cost as would do if nothing were lost, in minor units. */
    private record Priced(PvModule module, long atLeast) {}

    /** The inverters that feed such a grid at all; any module will do to tell. */
    private List<GridInverter> feeding(List<GridInverter> every) {
        if (catalog.modules().isEmpty()) {
            return List.of();
        }
        GridArray any = array(yields.extremes(catalog.modules().get(0)), 1);
        return every.stream()
                .filter(inverter -> judged(any, inverter).checks().stream()
                        .allMatch(check -> check.passed() || !OF_THE_GRID.contains(check.rule())))
                .toList();
    }

    private GridOption option(PvModule module, GridInverter inverter) {
        return enough(yields.extremes(module), inverter.efficiency(), array -> judged(array, inverter));
    }

    private GridOption judged(GridArray array, GridInverter inverter) {
        return inverter instanceof StringInverter strings
                ? new GridOption(array, held(array, strings), null)
                : new GridOption(array, null, held(array, (Microinverter) inverter));
    }

    private StringInverterFit held(GridArray array, StringInverter inverter) {
        return supply.held(StringInverterFit.of(
                        grid(), array, inverter, brief.policy().grid()))
                .and(supply.modules(array.module().model(), array.modules()));
    }

    private MicroinverterFit held(GridArray array, Microinverter inverter) {
        return supply.held(MicroinverterFit.of(
                        grid(), array, inverter, brief.policy().grid()))
                .and(supply.modules(array.module().model(), array.modules()));
    }

    /** The fewest modules that bring what is wished through an inverter, what it clips included. */
    private GridOption enough(ModuleExtremes extremes, Ratio efficiency, Function<GridArray, GridOption> judge) {
        GridOption option = judge.apply(array(extremes, modules(extremes.module(), efficiency.fraction())));
        int needed = modules(extremes.module(), option.left());
        while (option.fits() && needed > option.array().modules()) {
            option = judge.apply(array(extremes, needed));
            needed = modules(extremes.module(), option.left());
        }
        return option;
    }

    private GridArray array(ModuleExtremes extremes, int modules) {
        return new GridArray(extremes, modules, brief.policy().array().whenNew(), sunshine);
    }

    private GridService grid() {
        return new GridService(
                brief.service(), brief.resolved().site().resolved().recordHigh());
    }

    /** Every inverter of the catalogue held against the array of an option. */
    private GridInverterSelection inverters(GridOption option) {
        GridArray array = option.array();
        return new GridInverterSelection(
                array.extremes(),
                StringInverterSelection.of(catalog.stringInverters().stream()
                        .map(inverter -> held(array, inverter))
                        .toList()),
                MicroinverterSelection.of(catalog.microinverters().stream()
                        .map(inverter -> held(array, inverter))
                        .toList()));
    }

    private int modules(PvModule module, double efficiency) {
        Integer fixed = brief.grid().modules();
        Power power = brief.grid().power();
        double count = fixed != null
                ? fixed
                : power != null
                        ? power.dividedBy(module.power())
                        : yearlyUse.wattHours()
                                * brief.grid().coverage().fraction()
                                / (yearly(daily(module, 1)).wattHours() * efficiency);
        return (int) Math.max(1, Math.min(GridArray.MOST_MODULES, Math.ceil(count - 1e-9)));
    }

    private List<Energy> daily(PvModule module, double factor) {
        ModuleYield yield = yields.tracking(module);
        return Arrays.stream(Month.values())
                .map(month -> yield.in(month).times(factor))
                .toList();
    }

    private static Energy yearly(List<Energy> daily) {
        double sum = 0;
        for (Month month : Month.values()) {
            sum += daily.get(month.getValue() - 1).wattHours() * MonthlyClimate.daysIn(month);
        }
        return Energy.wattHours(sum);
    }

    private SystemDesign complete(GridOption chosen) {
        PvModule module = chosen.module();
        int modules = chosen.array().modules();
        StringInverterFit string = chosen.string();
        MicroinverterFit micro = chosen.micro();
        List<Energy> yield = daily(module, modules * chosen.left());
        Energy yearly = yearly(yield);
        BillOfMaterials bill = bill(module, modules, string, micro);
        GridFlows flows = flows(module, modules, string, micro);
        Tariff tariff = brief.grid().tariff();
        GridFeed feed = new GridFeed(
                module.model(),
                modules,
                chosen.array().power(),
                string,
                micro,
                otherKind(chosen),
                yield,
                yearly,
                yearlyUse,
                yearlyUse.wattHours() == 0 ? null : Ratio.of(yearly.dividedBy(yearlyUse)),
                flows,
                flows == null || tariff == null ? null : GridBill.of(flows, tariff, bill.total()));
        return SystemDesignBuilder.builder()
                .brief(brief)
                .complete(true)
                .missing(List.of())
                .sun(sun)
                .energyBudget(loads.budget())
                .moduleExtremes(chosen.array().extremes())
                .grid(feed)
                .gridInverters(inverters(chosen))
                .modules(modules(chosen))
                .billOfMaterials(bill)
                .frontier(List.of())
                .checks(List.of(coverage(feed)))
                .alternatives(List.of())
                .autonomyPrices(List.of())
                .build();
    }

    /** The hours of the weather year, or of made-up ones; nothing when none are to be run. */
    private @Nullable GridFlows flows(
            PvModule module, int modules, @Nullable StringInverterFit string, @Nullable MicroinverterFit micro) {
        if (!Proof.wanted(brief)) {
            return null;
        }
        Power power = string != null ? string.power() : SystemDesign.part(micro).power();
        GridInverter inverter =
                string != null ? string.inverter() : SystemDesign.part(micro).inverter();
        Tariff tariff = brief.grid().tariff();
        List<GridHours> years = new FeedingArray(module, modules, power, inverter.efficiency())
                .beside(
                        loads,
                        SystemSimulator.years(
                                brief, sun.plane(), brief.policy().system().simulatedYears()),
                        brief.resolved().site().months().snowLoss(),
                        brief.policy().array());
        return GridFlows.of(years, power, tariff == null ? null : tariff.exportLimit());
    }

    /** Price of the same module with the cheapest inverter of the other kind. */
    private @Nullable Money otherKind(GridOption chosen) {
        List<? extends GridInverter> others = chosen.inStrings() ? catalog.microinverters() : catalog.stringInverters();
        return others.stream()
                .map(inverter -> option(chosen.module(), inverter))
                .filter(GridOption::fits)
                .map(GridOption::price)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Every module with the inverter of an option. */
    private ModuleSelection modules(GridOption chosen) {
        GridInverter inverter = chosen.inverter();
        return ModuleSelection.ofOptions(catalog.modules().stream().map(module -> option(module, inverter)));
    }

    private static BillOfMaterials bill(
            PvModule module, int modules, @Nullable StringInverterFit string, @Nullable MicroinverterFit micro) {
        BillLine first = BillLine.of("module", module.model(), modules, module.price());
        Stream<BillLine> inverter = string != null
                ? Stream.of(BillLine.of(
                        "stringInverter",
                        string.product(),
                        string.count(),
                        string.inverter().price()))
                : Stream.ofNullable(micro)
                        .map(unit -> BillLine.of(
                                "microinverter",
                                unit.product(),
                                unit.count(),
                                unit.inverter().price()));
        return BillOfMaterials.of(Stream.concat(Stream.of(first), inverter).toList());
    }

    private Check coverage(GridFeed feed) {
        Ratio coverage = feed.coverage();
        Ratio asked = brief.grid().coverage();
        return Check.that(
                DesignRule.COVERAGE,
                coverage == null || coverage.compareTo(asked) >= 0,
                value("yearlyYield", feed.yearlyYield()),
                value("yearlyUse", feed.yearlyUse()));
    }

    /** What stood in the way: the rules that the nearest inverter breaks with any module; all are held against that one. */
    private SystemDesign incomplete(@Nullable GridOption nearest) {
        List<Check> reasons =
                NearestMiss.of(DesignRule.INVERTER, nearest == null ? List.of() : List.of(nearest.rejection()));
        return SystemDesignBuilder.builder()
                .brief(brief)
                .complete(false)
                .missing(List.of(new NominalVoltage.PassedOver(brief.service().voltage(), reasons)))
                .sun(sun)
                .energyBudget(loads.budget())
                .gridInverters(nearest == null ? null : inverters(nearest))
                .modules(nearest == null ? null : modules(nearest))
                .frontier(List.of())
                .checks(List.of())
                .alternatives(List.of())
                .autonomyPrices(List.of())
                .build();
    }
}
