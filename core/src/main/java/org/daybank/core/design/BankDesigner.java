package org.daybank.core.design;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.design.search.AvailabilitySearch;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.design.search.FailureAnalysis;
import org.daybank.core.design.search.ModuleYields;
import org.daybank.core.design.search.ProductEvaluation;
import org.daybank.core.design.search.SystemSelection;
import org.daybank.core.design.search.VoltageSearch;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.sun.MonthlySun;
import org.jspecify.annotations.Nullable;

/** The job for systems on a bank: loads, bank, array, controller, inverter, proof. */
final class BankDesigner {
    private final DesignBrief brief;
    private final Catalog catalog;
    private final LoadProfile loads;
    private final MonthlySun sun;
    private final ModuleYields yields;

    private BankDesigner(DesignBrief brief, Catalog catalog) {
        this.brief = brief;
        this.catalog = catalog;
        this.loads = brief.profile();
        this.sun = ArraySun.of(brief, loads);
        this.yields = new ModuleYields(
                brief.site(),
                ArraySun.spread(brief, sun.plane()),
                brief.policy().array());
    }

    /** The cheapest complete design at the lowest bus voltage that does, with the cheapest of other voltages and chemistries beside it. */
    static SystemDesign design(DesignBrief brief, Catalog catalog) {
        return new BankDesigner(brief, catalog).design();
    }

    /** Only its parts. */
    static Optional<CandidateSystem> cheapest(DesignBrief brief, Catalog catalog) {
        return new BankDesigner(brief, catalog).selection().selected();
    }

    private SystemSelection selection() {
        return SystemSelection.of(brief, new ProductEvaluation(brief, catalog, loads, yields));
    }

    private SystemDesign design() {
        SystemSelection draft = selection();
        if (draft.selected().isEmpty()) {
            return incomplete(draft);
        }
        if (!DesignSimulation.required(brief)) {
            return tell(draft, null).build();
        }
        DesignSimulation simulation = new DesignSimulation(brief, catalog, sun.plane());
        return proved(outcome(draft, simulation), simulation);
    }

    /** The first draft as it runs, or what an availability that was asked for makes of it. */
    private AvailabilitySearch.Result outcome(SystemSelection draft, DesignSimulation simulation) {
        Ratio availability = brief.wishes().availability();
        if (availability == null) {
            Simulation run = simulation.of(draft.selected().orElseThrow());
            return new AvailabilitySearch.Result(draft, run, true, 1, List.of());
        }
        return new AvailabilitySearch(
                        draft, other -> SystemSelection.of(other, evaluation(other)), simulation::of, sun.plane())
                .find(availability)
                .orElseThrow();
    }

    /** The same search for a brief that differs in its policy alone. */
    private ProductEvaluation evaluation(DesignBrief other) {
        return new ProductEvaluation(other, catalog, other.profile(), yields);
    }

    /** Nothing is whole: every product of the catalogue held against what is asked at the voltage that came nearest. */
    private SystemDesign incomplete(SystemSelection draft) {
        List<FailureAnalysis> ends = draft.failures();
        FailureAnalysis nearest = FailureAnalysis.nearest(ends);
        return SystemDesignBuilder.builder()
                .brief(draft.brief())
                .complete(false)
                .missing(passedOver(ends))
                .sun(sun)
                .energyBudget(loads.budget())
                .checks(List.of())
                .frontier(List.of())
                .alternatives(List.of())
                .autonomyPrices(List.of())
                .batteries(nearest.batteries())
                .controllers(nearest.controllers())
                .modules(nearest.modules())
                .inverters(nearest.inverters().orElse(null))
                .build();
    }

    private static List<NominalVoltage.PassedOver> passedOver(List<FailureAnalysis> ends) {
        return ends.stream()
                .map(end -> new NominalVoltage.PassedOver(end.voltage(), end.failedChecks()))
                .toList();
    }

    /** With what the hours show. */
    private SystemDesign proved(AvailabilitySearch.Result outcome, DesignSimulation simulation) {
        CandidateSystem chosen = outcome.selection().selected().orElseThrow();
        SystemDesignBuilder design = tell(outcome.selection(), outcome);
        ChargeSettings settings = SystemDesign.part(design.chargeSettings());
        return design.availability(outcome.simulation().reliability())
                .frontier(outcome.frontier())
                .generator(EngineBackup.of(
                                brief,
                                chosen,
                                settings.absorption(),
                                outcome.simulation(),
                                engine -> simulation.of(chosen, engine))
                        .orElse(null))
                .build();
    }

    private SystemDesignBuilder tell(SystemSelection draft, AvailabilitySearch.@Nullable Result outcome) {
        ProductEvaluation evaluation = draft.evaluation();
        CandidateSystem chosen = draft.selected().orElseThrow();
        Voltage voltage = chosen.nominalVoltage();
        BankLayout layout = chosen.layout();
        Chemistry chemistry = layout.battery().chemistry();
        EnergyBudget budget = chosen.budget();
        ModuleExtremes extremes = yields.extremes(chosen.charger().array().module());
        ChargerSelection controllers = evaluation
                .offer(extremes, voltage, chemistry, budget)
                .map(offer -> evaluation.controllers(voltage, layout, offer))
                .orElseThrow();
        ChargerFit charger = controllers.ranked().stream()
                .filter(fit -> fit.product().equals(chosen.charger().product()))
                .findFirst()
                .orElse(chosen.charger());
        ChargeSettings settings =
                evaluation.requirements().settings(voltage, chemistry).forBattery(layout.battery());
        return SystemDesignBuilder.builder()
                .brief(draft.brief())
                .complete(true)
                .missing(List.of())
                .sun(sun)
                .energyBudget(budget)
                .nominalVoltage(new NominalVoltage(voltage, passedOver(draft.failures())))
                .bank(chosen.bank())
                .array(charger.array())
                .moduleExtremes(extremes)
                .charger(charger)
                .inverter(chosen.inverter())
                .monthlyBalance(chosen.size())
                .trackingGain(evaluation.comparison(extremes, voltage, chemistry, trackingEfficiency(brief, charger)))
                .recovery(BankChecks.recovery(chosen))
                .chargeSettings(settings)
                .batteryLife(BankYear.life(draft.brief(), chosen, outcome == null ? null : outcome.simulation())
                        .orElse(null))
                .ventilation(Ventilation.of(layout).orElse(null))
                .billOfMaterials(BillOfMaterials.of(chosen))
                .checks(BankChecks.of(draft.brief(), chosen, charger, settings, outcome))
                .parts(chosen.parts(sun.plane()))
                .frontier(List.of())
                .alternatives(alternatives(draft, chosen))
                .autonomyPrices(AutonomyPoint.around(draft.brief(), chosen, this::evaluation))
                .batteries(evaluation.batteries(voltage, chosen.inverter(), chosen.controllerDraw()))
                .controllers(controllers)
                .modules(evaluation.modules(voltage, layout, budget, charger.controller()))
                .inverters(chosen.inverter() == null ? null : evaluation.inverters(voltage, chemistry));
    }

    /** Of the controller chosen where it tracks, else of a typical one. */
    private static Ratio trackingEfficiency(DesignBrief brief, ChargerFit charger) {
        return charger.controller().kind().path() == ChargePath.TRACKING
                ? charger.controller().efficiency()
                : brief.policy().array().chargerEfficiency();
    }

    /** Of other voltages and chemistries, and with other kinds of controller than the one chosen. */
    private static List<Alternative> alternatives(SystemSelection draft, CandidateSystem chosen) {
        ControllerKind kind = chosen.charger().controller().kind();
        Stream<CandidateSystem> otherwiseCharged = Arrays.stream(ControllerKind.values())
                .filter(other -> other != kind && other != ControllerKind.SHUNT)
                .flatMap(other ->
                        VoltageSearch.cheapest(draft.evaluation(), chosen.nominalVoltage(), chosen.chemistry(), other)
                                .stream());
        return Stream.concat(draft.systems().stream(), otherwiseCharged)
                .filter(candidate -> !candidate.equals(chosen))
                .sorted(Comparator.comparing(CandidateSystem::price))
                .limit(draft.brief().policy().system().alternatives())
                .map(candidate -> new Alternative(
                        candidate.nominalVoltage(),
                        candidate.layout().battery().chemistry(),
                        candidate.charger().controller().kind(),
                        BillOfMaterials.of(candidate),
                        candidate.price().plus(chosen.price().times(-1))))
                .toList();
    }
}
