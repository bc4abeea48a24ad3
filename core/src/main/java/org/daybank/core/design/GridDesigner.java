package org.daybank.core.design;

import java.time.Month;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
import org.daybank.core.inverter.GridPolicy;
import org.daybank.core.inverter.GridService;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.MicroinverterSelection;
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
import org.daybank.core.working.Rejection;
import org.jspecify.annotations.Nullable;

/** The job for an array that feeds the grid without a bank: how many modules, and the inverters that take them. */
final class GridDesigner {
    /** What an inverter turns into AC while none is chosen; only the first guess at a number of modules depends on it. */
    private static final double GUESSED_EFFICIENCY = 0.96;

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

    /** Modules with all inverters held against them, and the cheapest of each kind that fits. */
    private record Option(
            GridArray array,
            GridInverterSelection inverters,
            @Nullable StringInverterFit string,
            @Nullable MicroinverterFit micro) {
        Optional<Money> price(@Nullable Money inverterPrice) {
            return Optional.ofNullable(inverterPrice).map(price -> price.plus(modulePrice()));
        }

        Money modulePrice() {
            return array.module().price().times(array.modules());
        }

        Optional<Money> withStrings() {
            return price(string == null ? null : string.price());
        }

        Optional<Money> withUnits() {
            return price(micro == null ? null : micro.price());
        }

        boolean fits() {
            return string != null || micro != null;
        }

        boolean stringsChosen() {
            return withStrings().isPresent()
                    && (withUnits().isEmpty()
                            || withStrings().orElseThrow().compareTo(withUnits().orElseThrow()) <= 0);
        }

        Money best() {
            return (stringsChosen() ? withStrings() : withUnits()).orElseThrow();
        }
    }

    SystemDesign design() {
        List<Option> options = catalog.modules().stream()
                .map(module -> option(
                        ModuleExtremes.of(module, brief.site(), brief.policy().array())))
                .toList();
        return options.stream()
                .filter(Option::fits)
                .min(Comparator.comparing(Option::best)
                        .thenComparing(option -> option.array().module().model()))
                .map(this::complete)
                .orElseGet(() -> incomplete(options));
    }

    /** So many modules as bring what is wished through the inverter that is then chosen. */
    private Option option(ModuleExtremes extremes) {
        int modules = modules(extremes.module(), GUESSED_EFFICIENCY);
        Option option = judged(extremes, modules);
        if (brief.grid().modules() == null && brief.grid().power() == null && option.fits()) {
            int needed = modules(extremes.module(), left(option));
            return needed == modules ? option : judged(extremes, needed);
        }
        return option;
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

    private Option judged(ModuleExtremes extremes, int modules) {
        GridArray array =
                new GridArray(extremes, modules, brief.policy().array().whenNew(), sunshine);
        GridService grid = new GridService(brief.service(), brief.site().recordHigh());
        GridPolicy policy = brief.policy().grid();
        List<Finding> delivery = supply.modules(extremes.module().model(), modules);
        GridInverterSelection inverters = new GridInverterSelection(
                extremes,
                StringInverterSelection.of(catalog.stringInverters().stream()
                        .map(inverter -> supply.held(StringInverterFit.of(grid, array, inverter, policy))
                                .and(delivery))
                        .toList()),
                MicroinverterSelection.of(catalog.microinverters().stream()
                        .map(inverter -> supply.held(MicroinverterFit.of(grid, array, inverter, policy))
                                .and(delivery))
                        .toList()));
        return new Option(
                array,
                inverters,
                inverters.stringInverters().ranked().stream().findFirst().orElse(null),
                inverters.microinverters().ranked().stream().findFirst().orElse(null));
    }

    /** What efficiency and clipping leave of the modules' energy. */
    private static double left(Option option) {
        StringInverterFit string = option.string();
        MicroinverterFit micro = option.micro();
        if (option.stringsChosen() && string != null) {
            return string.inverter()
                    .efficiency()
                    .times(string.clipping().complement())
                    .fraction();
        }
        return micro == null
                ? GUESSED_EFFICIENCY
                : micro.inverter()
                        .efficiency()
                        .times(micro.clipping().complement())
                        .fraction();
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

    private SystemDesign complete(Option chosen) {
        PvModule module = chosen.array().module();
        int modules = chosen.array().modules();
        StringInverterFit string = chosen.stringsChosen() ? chosen.string() : null;
        MicroinverterFit micro = chosen.stringsChosen() ? null : chosen.micro();
        List<Energy> yield = daily(module, modules * left(chosen));
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
                (string != null ? chosen.withUnits() : chosen.withStrings()).orElse(null),
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
                .gridInverters(chosen.inverters())
                .billOfMaterials(bill)
                .frontier(List.of())
                .checks(List.of(coverage(feed)))
                .alternatives(List.of())
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

    /** What stood in the way: the rules that the nearest inverter breaks with any module. */
    private SystemDesign incomplete(List<Option> options) {
        List<Rejection> rejected = options.stream()
                .flatMap(option -> Stream.concat(
                        option.inverters().stringInverters().rejected().stream(),
                        option.inverters().microinverters().rejected().stream()))
                .toList();
        List<Finding> reasons = NearestMiss.of("inverter", rejected);
        return SystemDesignBuilder.builder()
                .brief(brief)
                .complete(false)
                .missing(List.of(new NominalVoltage.PassedOver(brief.service().voltage(), reasons)))
                .sun(sun)
                .energyBudget(loads.budget())
                .gridInverters(options.isEmpty() ? null : options.get(0).inverters())
                .frontier(List.of())
                .checks(List.of())
                .alternatives(List.of())
                .build();
    }
}
