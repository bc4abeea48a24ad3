package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.search.DeliveryRule;
import org.daybank.core.design.search.GridCandidate;
import org.daybank.core.design.search.GridSearch;
import org.daybank.core.design.search.ModuleYields;
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
    private final DeliveryRule delivery;

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
                        brief.resolved().site(),
                        ArraySun.spread(brief, sun.plane()),
                        brief.policy().array()),
                yearlyUse);
        this.delivery = new DeliveryRule(catalog, brief.wishes());
    }

    /** The cheapest pair of a module and an inverter, or the reasons why there is none. */
    DesignOutcome design() {
        GridSearch.Result result = search.search();
        GridCandidate cheapest = result.cheapest();
        return cheapest == null ? none(result.nearest()) : evaluated(cheapest);
    }

    private GridDesign evaluated(GridCandidate selected) {
        List<Energy> yield = search.dailyYield(selected);
        Energy yearly = GridSearch.yearly(yield);
        GridEnergy energy = new GridEnergy(
                sun,
                loads.budget(),
                yield,
                yearly,
                yearlyUse,
                yearlyUse.wattHours() == 0 ? Optional.empty() : Optional.of(Ratio.of(yearly.dividedBy(yearlyUse))));
        BillOfMaterials bill = BillOfMaterials.of(selected);
        GridSystem system = new GridSystem(
                selected.module().model(),
                selected.array().modules(),
                selected.array().power(),
                selected.array().extremes(),
                Optional.ofNullable(selected.string()),
                Optional.ofNullable(selected.micro()),
                new DesignWiring(brief).forGrid(selected),
                bill);
        Optional<GridFlows> flows = flows(selected);
        Tariff tariff = brief.grid().tariff();
        List<Check> checks = new ArrayList<>();
        checks.add(coverage(energy));
        bill.lines()
                .forEach(line ->
                        delivery.unavailable(line.product(), line.count()).ifPresent(checks::add));
        return new GridDesign(
                brief,
                system,
                energy,
                new GridEvidence(
                        checks,
                        flows,
                        tariff == null
                                ? Optional.empty()
                                : flows.map(hourly -> GridBill.of(hourly, tariff, bill.total()))),
                new GridAlternatives(search.priceOfOtherKind(selected)),
                new GridSelections(search.modules(selected), search.inverters(selected)));
    }

    /** The flows of the weather year, or of synthetic years; empty where none are required. */
    private Optional<GridFlows> flows(GridCandidate selected) {
        if (!DesignSimulation.required(brief)) {
            return Optional.empty();
        }
        Tariff tariff = brief.grid().tariff();
        List<GridHours> years = new FeedingArray(
                        selected.module(),
                        selected.array().modules(),
                        selected.power(),
                        selected.inverter().efficiency())
                .beside(
                        loads,
                        SystemSimulator.years(
                                brief, sun.plane(), brief.policy().system().simulatedYears()),
                        brief.resolved().site().months().snowLoss(),
                        brief.policy().array());
        return Optional.of(GridFlows.of(years, selected.power(), tariff == null ? null : tariff.exportLimit()));
    }

    private Check coverage(GridEnergy energy) {
        Ratio required = brief.grid().coverage();
        return Check.that(
                DesignRule.COVERAGE,
                energy.coverage().map(found -> found.compareTo(required) >= 0).orElse(true),
                value("yearlyYield", energy.yearlyYield()),
                value("yearlyUse", energy.yearlyUse()));
    }

    /** The rules that the nearest pair fails; every product is evaluated with that pair. */
    private NoDesign none(@Nullable GridCandidate nearest) {
        Optional<GridCandidate> pair = Optional.ofNullable(nearest);
        return new NoDesign(
                brief,
                search.failedChecks(nearest),
                new RequiredEnergy(sun, loads.budget()),
                new EvaluatedProducts(
                        List.of(),
                        pair.map(search::modules),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        pair.map(search::inverters)));
    }
}
