package org.daybank.core.design;

import java.util.List;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.search.GridCandidate;
import org.daybank.core.design.search.GridSearch;
import org.daybank.core.design.search.ModuleYields;
import org.daybank.core.design.search.NearestRejection;
import org.daybank.core.grid.FeedingArray;
import org.daybank.core.grid.GridBill;
import org.daybank.core.grid.GridFlows;
import org.daybank.core.grid.GridHours;
import org.daybank.core.grid.Tariff;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** The job for an array that feeds the grid without a bank: how many modules, and the inverters for them. */
final class GridDesigner {
    private final DesignBrief brief;
    private final LoadProfile loads;
    private final MonthlySun sun;
    private final Energy yearlyUse;
    private final GridSearch search;

    GridDesigner(DesignBrief brief, Catalog catalog) {
        this.brief = brief;
        this.loads = brief.profile();
        this.sun = ArraySun.of(brief, loads);
        this.yearlyUse = GridSearch.yearly(
                loads.budget().months().stream().map(MonthBudget::atLoads).toList());
        this.search = new GridSearch(
                brief,
                catalog,
                new ModuleYields(
                        brief.site(),
                        ArraySun.spread(brief, sun.plane()),
                        brief.policy().array()),
                yearlyUse);
    }

    /** The cheapest pair of a module and an inverter. */
    SystemDesign design() {
        GridSearch.Result result = search.search();
        GridCandidate cheapest = result.cheapest();
        return cheapest == null ? incomplete(result.nearest()) : complete(cheapest);
    }

    private SystemDesign complete(GridCandidate chosen) {
        List<Energy> yield = search.dailyYield(chosen);
        Energy yearly = GridSearch.yearly(yield);
        BillOfMaterials bill = BillOfMaterials.of(chosen);
        GridFlows flows = flows(chosen);
        Tariff tariff = brief.grid().tariff();
        GridFeed feed = new GridFeed(
                chosen.module().model(),
                chosen.array().modules(),
                chosen.array().power(),
                chosen.string(),
                chosen.micro(),
                search.priceOfOtherKind(chosen).orElse(null),
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
                .gridInverters(search.inverters(chosen))
                .modules(search.modules(chosen))
                .billOfMaterials(bill)
                .frontier(List.of())
                .checks(List.of(coverage(feed)))
                .alternatives(List.of())
                .autonomyPrices(List.of())
                .build();
    }

    /** The flows of the weather year, or of synthetic years; absent where none are required. */
    private @Nullable GridFlows flows(GridCandidate chosen) {
        if (!DesignSimulation.required(brief)) {
            return null;
        }
        Tariff tariff = brief.grid().tariff();
        List<GridHours> years = new FeedingArray(
                        chosen.module(),
                        chosen.array().modules(),
                        chosen.power(),
                        chosen.inverter().efficiency())
                .beside(
                        loads,
                        SystemSimulator.years(
                                brief, sun.plane(), brief.policy().system().simulatedYears()),
                        brief.site().months().snowLoss(),
                        brief.policy().array());
        return GridFlows.of(years, chosen.power(), tariff == null ? null : tariff.exportLimit());
    }

    private Check coverage(GridFeed feed) {
        Ratio coverage = feed.coverage();
        Ratio asked = brief.grid().coverage();
        return Check.that(
                "coverage",
                coverage == null || coverage.compareTo(asked) >= 0,
                "In a year the array brings %s, the loads use %s.",
                feed.yearlyYield(),
                feed.yearlyUse());
    }

    /** What stood in the way: the rules that the nearest inverter breaks with any module; all are held against that one. */
    private SystemDesign incomplete(@Nullable GridCandidate nearest) {
        List<Check> reasons = NearestRejection.failedChecks(
                "inverter",
                nearest == null ? List.of() : List.of(nearest.rejection()),
                "The catalogue has no inverter for this.");
        return SystemDesignBuilder.builder()
                .brief(brief)
                .complete(false)
                .missing(List.of(new NominalVoltage.PassedOver(brief.service().voltage(), reasons)))
                .sun(sun)
                .energyBudget(loads.budget())
                .gridInverters(nearest == null ? null : search.inverters(nearest))
                .modules(nearest == null ? null : search.modules(nearest))
                .frontier(List.of())
                .checks(List.of())
                .alternatives(List.of())
                .autonomyPrices(List.of())
                .build();
    }
}
