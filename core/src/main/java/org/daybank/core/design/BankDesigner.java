package org.daybank.core.design;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.design.search.AvailabilitySearch;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.design.search.DeliveryRule;
import org.daybank.core.design.search.FailureAnalysis;
import org.daybank.core.design.search.ModuleYields;
import org.daybank.core.design.search.ProductEvaluation;
import org.daybank.core.design.search.SystemSelection;
import org.daybank.core.design.search.VoltageSearch;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** The design of a system on a bank: selection of the parts, checks, simulation, alternatives. */
final class BankDesigner {
    private final DesignBrief brief;
    private final Catalog catalog;
    private final LoadProfile loads;
    private final MonthlySun sun;
    private final ModuleYields yields;
    private final DeliveryRule delivery;

    private BankDesigner(DesignBrief brief, Catalog catalog) {
        this.brief = brief;
        this.catalog = catalog;
        this.loads = brief.profile();
        this.sun = ArraySun.of(brief, loads);
        this.yields = new ModuleYields(
                brief.resolved().site(),
                ArraySun.spread(brief, sun.plane()),
                brief.policy().array());
        this.delivery = new DeliveryRule(catalog, brief.wishes());
    }

    /** The cheapest system at the lowest nominal voltage that has any, or the reasons why there is none. */
    static DesignOutcome design(DesignBrief brief, Catalog catalog) {
        return new BankDesigner(brief, catalog).design();
    }

    /** Only the selected system, without its evaluation. */
    static Optional<CandidateSystem> cheapest(DesignBrief brief, Catalog catalog) {
        return new BankDesigner(brief, catalog).selection().selected();
    }

    private SystemSelection selection() {
        return SystemSelection.of(brief, new ProductEvaluation(brief, catalog, loads, yields));
    }

    private DesignOutcome design() {
        SystemSelection first = selection();
        if (first.selected().isEmpty()) {
            return none(first);
        }
        if (!DesignSimulation.required(brief)) {
            return evaluated(first, first.selected().orElseThrow(), null, Optional.empty());
        }
        DesignSimulation simulation = new DesignSimulation(brief, catalog, sun.plane());
        AvailabilitySearch.Result result = simulated(first, simulation);
        CandidateSystem selected = result.selection().selected().orElseThrow();
        return evaluated(
                result.selection(),
                selected,
                result,
                EngineBackup.of(
                        brief,
                        selected,
                        chargeSettings(result.selection(), selected).absorption(),
                        result.simulation(),
                        engine -> simulation.of(selected, engine)));
    }

    /** The first selection with its simulation, or the selection that has the required availability. */
    private AvailabilitySearch.Result simulated(SystemSelection first, DesignSimulation simulation) {
        Ratio availability = brief.wishes().availability();
        if (availability == null) {
            Simulation run = simulation.of(first.selected().orElseThrow());
            return new AvailabilitySearch.Result(first, run, true, 1, List.of());
        }
        return new AvailabilitySearch(
                        first, other -> SystemSelection.of(other, evaluation(other)), simulation::of, sun.plane())
                .find(availability)
                .orElseThrow();
    }

    /** The same products for a brief that differs in its policy alone. */
    private ProductEvaluation evaluation(DesignBrief other) {
        return new ProductEvaluation(other, catalog, other.profile(), yields);
    }

    private NoDesign none(SystemSelection selection) {
        List<FailureAnalysis> failures = selection.failures();
        FailureAnalysis nearest = FailureAnalysis.nearest(failures);
        return new NoDesign(
                brief,
                nearest.failedChecks(),
                new RequiredEnergy(sun, loads.budget()),
                new EvaluatedProducts(
                        rejectedVoltages(failures),
                        Optional.of(nearest.modules()),
                        Optional.of(nearest.batteries()),
                        Optional.of(nearest.controllers()),
                        nearest.inverters(),
                        Optional.empty()));
    }

    private static List<RejectedVoltage> rejectedVoltages(List<FailureAnalysis> failures) {
        return failures.stream()
                .map(failure -> new RejectedVoltage(failure.voltage(), failure.failedChecks()))
                .toList();
    }

    private static ChargeSettings chargeSettings(SystemSelection selection, CandidateSystem selected) {
        return selection
                .evaluation()
                .requirements()
                .settings(selected.nominalVoltage(), selected.chemistry())
                .forBattery(selected.layout().battery());
    }

    private StandAloneDesign evaluated(
            SystemSelection selection,
            CandidateSystem selected,
            AvailabilitySearch.@Nullable Result result,
            Optional<EngineBackup> generator) {
        DesignBrief designed = selection.brief();
        ProductEvaluation evaluation = selection.evaluation();
        Voltage voltage = selected.nominalVoltage();
        ModuleExtremes extremes = yields.extremes(selected.charger().array().module());
        ChargerSelection controllers = evaluation
                .offer(extremes, voltage, selected.chemistry(), selected.budget())
                .map(offer -> evaluation.controllers(voltage, selected.layout(), offer))
                .orElseThrow();
        ChargerFit charger = controllers.ranked().stream()
                .filter(fit -> fit.product().equals(selected.charger().product()))
                .findFirst()
                .orElse(selected.charger());
        ChargeSettings settings = chargeSettings(selection, selected);
        DesignWiring wiring = new DesignWiring(designed);
        BatterySystem system = BatterySystemBuilder.builder()
                .nominalVoltage(voltage)
                .bank(selected.bank())
                .array(charger.array())
                .moduleExtremes(extremes)
                .chargeController(charger)
                .inverter(Optional.ofNullable(selected.inverter()))
                .chargeSettings(settings)
                .ventilation(Ventilation.of(selected.layout()))
                .generator(generator)
                .wiring(wiring.onBank(selected, charger, extremes, settings))
                .billOfMaterials(BillOfMaterials.of(selected))
                .parts(selected.parts(sun.plane()))
                .build();
        return new StandAloneDesign(
                designed,
                system,
                new EnergyBalance(
                        sun,
                        selected.budget(),
                        selected.size(),
                        evaluation.comparison(
                                extremes, voltage, selected.chemistry(), trackingEfficiency(designed, charger)),
                        BankChecks.recovery(selected)),
                new DesignEvidence(
                        Stream.concat(
                                        BankChecks.of(designed, selected, charger, settings, result).stream(),
                                        unavailable(system.billOfMaterials()))
                                .toList(),
                        Optional.ofNullable(result)
                                .map(found -> found.simulation().reliability()),
                        BankYear.life(designed, selected, result == null ? null : result.simulation())),
                new DesignAlternatives(
                        alternatives(selection, selected),
                        AutonomyPoint.around(designed, selected, this::evaluation),
                        result == null ? List.of() : result.frontier(),
                        wiring.stringVoltages(charger.array(), extremes, voltage, catalog)),
                new ProductSelections(
                        rejectedVoltages(selection.failures()),
                        evaluation.modules(voltage, selected.layout(), selected.budget(), charger.controller()),
                        evaluation.batteries(voltage, selected.inverter(), selected.controllerDraw()),
                        controllers,
                        selected.inverter() == null
                                ? Optional.empty()
                                : Optional.of(evaluation.inverters(voltage, selected.chemistry()))));
    }

    private Stream<Check> unavailable(BillOfMaterials bill) {
        return bill.lines().stream().flatMap(line -> delivery.unavailable(line.product(), line.count()).stream());
    }

    /** The efficiency of the selected controller where it tracks, else the assumed one. */
    private static Ratio trackingEfficiency(DesignBrief brief, ChargerFit charger) {
        return charger.controller().kind().path() == ChargePath.TRACKING
                ? charger.controller().efficiency()
                : brief.policy().array().chargerEfficiency();
    }

    /** Systems of other voltages and chemistries, and with other kinds of controller than the selected one. */
    private static List<Alternative> alternatives(SystemSelection selection, CandidateSystem selected) {
        ControllerKind kind = selected.charger().controller().kind();
        Stream<CandidateSystem> withOtherControllers = Arrays.stream(ControllerKind.values())
                .filter(other -> other != kind && other != ControllerKind.SHUNT)
                .flatMap(
                        other -> VoltageSearch.cheapest(
                                selection.evaluation(), selected.nominalVoltage(), selected.chemistry(), other)
                                .stream());
        return Stream.concat(selection.systems().stream(), withOtherControllers)
                .filter(candidate -> !candidate.equals(selected))
                .sorted(Comparator.comparing(CandidateSystem::price))
                .limit(selection.brief().policy().system().alternatives())
                .map(candidate -> new Alternative(
                        candidate.nominalVoltage(),
                        candidate.layout().battery().chemistry(),
                        candidate.charger().controller().kind(),
                        BillOfMaterials.of(candidate),
                        candidate.price().plus(selected.price().times(-1))))
                .toList();
    }
}
