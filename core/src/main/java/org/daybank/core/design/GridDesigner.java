package org.daybank.core.design;

import java.time.Month;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Finding;
import org.jspecify.annotations.Nullable;

/** The job for an array that feeds the grid without a bank: how many modules, and the inverters that take them. */
final class GridDesigner {
    private static final double DAYS_OF_FEBRUARY = 28.25;

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
        this.yields = new ModuleYields(brief.site(), sunshine, brief.policy().array());
        this.yearlyUse = yearly(
                loads.budget().months().stream().map(MonthBudget::atLoads).toList());
    }

    /** The cheapest pair of a module and an inverter: through a better inverter fewer modules bring the same. */
    SystemDesign design() {
        List<GridOption> options =
                catalog.modules().stream().flatMap(this::options).toList();
        return options.stream()
                .filter(GridOption::fits)
                .min(Comparator.comparing(GridOption::price)
                        .thenComparing(option -> option.module().model())
                        .thenComparing(option -> !option.inStrings())
                        .thenComparing(GridOption::product))
                .map(chosen -> complete(chosen, options))
                .orElseGet(() -> incomplete(options));
    }

    private Stream<GridOption> options(PvModule module) {
        ModuleExtremes extremes =
                ModuleExtremes.of(module, brief.site(), brief.policy().array());
        return Stream.concat(
                catalog.stringInverters().stream()
                        .map(inverter -> enough(
                                extremes,
                                inverter.efficiency(),
                                array -> new GridOption(array, held(array, inverter), null))),
                catalog.microinverters().stream()
                        .map(inverter -> enough(
                                extremes,
                                inverter.efficiency(),
                                array -> new GridOption(array, null, held(array, inverter)))));
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
        return new GridService(brief.service(), brief.site().recordHigh());
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
            double days = month == Month.FEBRUARY ? DAYS_OF_FEBRUARY : month.maxLength();
            sum += daily.get(month.getValue() - 1).wattHours() * days;
        }
        return Energy.wattHours(sum);
    }

    private SystemDesign complete(GridOption chosen, List<GridOption> options) {
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
                otherKind(chosen, options),
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
                        brief.site().months().snowLoss(),
                        brief.policy().array());
        return GridFlows.of(years, power, tariff == null ? null : tariff.exportLimit());
    }

    /** Price of the same module with the cheapest inverter of the other kind. */
    private static @Nullable Money otherKind(GridOption chosen, List<GridOption> options) {
        return options.stream()
                .filter(option -> option.fits()
                        && option.inStrings() != chosen.inStrings()
                        && option.module().equals(chosen.module()))
                .map(GridOption::price)
                .min(Comparator.naturalOrder())
                .orElse(null);
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

    private Finding coverage(GridFeed feed) {
        Ratio coverage = feed.coverage();
        Ratio asked = brief.grid().coverage();
        return Finding.that(
                "coverage",
                coverage == null || coverage.compareTo(asked) >= 0,
                "In a year the array brings %s, the loads use %s.",
                feed.yearlyYield(),
                feed.yearlyUse());
    }

    /** What stood in the way: the rules that the nearest inverter breaks with any module; all are held against that one. */
    private SystemDesign incomplete(List<GridOption> options) {
        Optional<GridOption> nearest =
                options.stream().min(Comparator.comparing(GridOption::rejection, NearestMiss.NEAREST_FIRST));
        List<Finding> reasons = NearestMiss.of(
                "inverter", nearest.map(GridOption::rejection).stream().toList());
        return SystemDesignBuilder.builder()
                .brief(brief)
                .complete(false)
                .missing(List.of(new NominalVoltage.PassedOver(brief.service().voltage(), reasons)))
                .sun(sun)
                .energyBudget(loads.budget())
                .gridInverters(nearest.map(this::inverters).orElse(null))
                .frontier(List.of())
                .checks(List.of())
                .alternatives(List.of())
                .autonomyPrices(List.of())
                .build();
    }
}
