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
                brief.resolved().site(),
                ArraySun.spread(brief, sun.plane()),
                brief.policy().array());
    }

    /** The cheapest complete design at the lowest bus voltage that does, with the cheapest of other voltages and chemistries beside it. */
    static SystemDesign design(DesignBrief brief, Catalog catalog) {
        return new BankDesigner(brief, catalog).design();
    }

    /** Only its parts. */
    static Optional<Candidate> cheapest(DesignBrief brief, Catalog catalog) {
        return new BankDesigner(brief, catalog).draft().chosen();
    }

    private Draft draft() {
        return Draft.of(brief, new Search(brief, catalog, loads, yields));
    }

    private SystemDesign design() {
        Draft draft = draft();
        if (draft.chosen().isEmpty()) {
            return incomplete(draft);
        }
        if (!Proof.wanted(brief)) {
            return tell(draft, null).build();
        }
        Proof proof = new Proof(brief, catalog, sun.plane());
        return proved(outcome(draft, proof), proof);
    }

    /** The first draft as it runs, or what an availability that was asked for makes of it. */
    private Steering.Outcome outcome(Draft draft, Proof proof) {
        Ratio availability = brief.wishes().availability();
        if (availability == null) {
            Simulation run = proof.of(draft.chosen().orElseThrow());
            return new Steering.Outcome(draft, run, true, 1, List.of());
        }
        return new Steering(draft, other -> Draft.of(other, search(other)), proof::of, sun.plane())
                .climb(availability)
                .orElseThrow();
    }

    /** The same search for a brief that differs in its policy alone. */
    private Search search(DesignBrief other) {
        return new Search(other, catalog, other.profile(), yields);
    }

    /** Nothing is whole: every product of the catalogue held against what is asked at the voltage that came nearest. */
    private SystemDesign incomplete(Draft draft) {
        List<DeadEnd> ends = ends(draft);
        DeadEnd nearest = DeadEnd.furthest(ends);
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
                .inverters(nearest.inverters())
                .build();
    }

    private static List<DeadEnd> ends(Draft draft) {
        List<Chemistry> chemistries = draft.brief().wishes().chemistries();
        return draft.without().stream()
                .map(voltage -> DeadEnd.of(draft.search(), chemistries, voltage))
                .toList();
    }

    private static List<NominalVoltage.PassedOver> passedOver(List<DeadEnd> ends) {
        return ends.stream()
                .map(end -> new NominalVoltage.PassedOver(end.voltage(), end.reasons()))
                .toList();
    }

    /** With what the hours show. */
    private SystemDesign proved(Steering.Outcome outcome, Proof proof) {
        Candidate chosen = outcome.draft().chosen().orElseThrow();
        SystemDesignBuilder design = tell(outcome.draft(), outcome);
        ChargeSettings settings = SystemDesign.part(design.chargeSettings());
        return design.availability(outcome.simulation().reliability())
                .frontier(outcome.frontier())
                .generator(EngineBackup.of(
                                brief,
                                chosen,
                                settings.absorption(),
                                outcome.simulation(),
                                engine -> proof.of(chosen, engine))
                        .orElse(null))
                .build();
    }

    private SystemDesignBuilder tell(Draft draft, Steering.@Nullable Outcome outcome) {
        Search search = draft.search();
        Candidate chosen = draft.chosen().orElseThrow();
        Voltage voltage = chosen.nominalVoltage();
        BankLayout layout = chosen.layout();
        Chemistry chemistry = layout.battery().chemistry();
        EnergyBudget budget = chosen.budget();
        ModuleExtremes extremes = yields.extremes(chosen.charger().array().module());
        ChargerSelection controllers = search.offer(extremes, voltage, chemistry, budget)
                .map(offer -> search.controllers(voltage, layout, offer))
                .orElseThrow();
        ChargerFit charger = controllers.ranked().stream()
                .filter(fit -> fit.product().equals(chosen.charger().product()))
                .findFirst()
                .orElse(chosen.charger());
        ChargeSettings settings = search.needs().settings(voltage, chemistry).forBattery(layout.battery());
        return SystemDesignBuilder.builder()
                .brief(draft.brief())
                .complete(true)
                .missing(List.of())
                .sun(sun)
                .energyBudget(budget)
                .nominalVoltage(new NominalVoltage(voltage, passedOver(ends(draft))))
                .bank(chosen.bank())
                .array(charger.array())
                .moduleExtremes(extremes)
                .charger(charger)
                .inverter(chosen.inverter())
                .monthlyBalance(chosen.size())
                .trackingGain(search.comparison(extremes, voltage, chemistry, trackingEfficiency(brief, charger)))
                .recovery(BankChecks.recovery(chosen))
                .chargeSettings(settings)
                .batteryLife(BankYear.life(draft.brief(), chosen, outcome == null ? null : outcome.simulation())
                        .orElse(null))
                .ventilation(Ventilation.of(layout).orElse(null))
                .billOfMaterials(chosen.bill())
                .checks(BankChecks.of(draft.brief(), chosen, charger, settings, outcome))
                .parts(SystemParts.of(chosen, sun.plane()))
                .frontier(List.of())
                .alternatives(alternatives(draft, chosen))
                .autonomyPrices(AutonomyPoint.around(draft.brief(), chosen, this::search))
                .batteries(search.batteries(voltage, chosen.inverter(), chosen.controllerDraw()))
                .controllers(controllers)
                .modules(search.modules(voltage, layout, budget, charger.controller()))
                .inverters(chosen.inverter() == null ? null : search.inverters(voltage, chemistry));
    }

    /** Of the controller chosen where it tracks, else of a typical one. */
    private static Ratio trackingEfficiency(DesignBrief brief, ChargerFit charger) {
        return charger.controller().kind().path() == ChargePath.TRACKING
                ? charger.controller().efficiency()
                : brief.policy().array().chargerEfficiency();
    }

    /** Of other voltages and chemistries, and with other kinds of controller than the one chosen. */
    private static List<Alternative> alternatives(Draft draft, Candidate chosen) {
        ControllerKind kind = chosen.charger().controller().kind();
        Stream<Candidate> otherwiseCharged = Arrays.stream(ControllerKind.values())
                .filter(other -> other != kind && other != ControllerKind.SHUNT)
                .flatMap(
                        other -> draft
                                .search()
                                .cheapest(
                                        chosen.nominalVoltage(),
                                        chosen.layout().battery().chemistry(),
                                        other)
                                .stream());
        return Stream.concat(draft.complete().stream(), otherwiseCharged)
                .filter(candidate -> !candidate.equals(chosen))
                .sorted(Comparator.comparing(Candidate::price))
                .limit(draft.brief().policy().system().alternatives())
                .map(candidate -> new Alternative(
                        candidate.nominalVoltage(),
                        candidate.layout().battery().chemistry(),
                        candidate.charger().controller().kind(),
                        candidate.bill(),
                        candidate.price().plus(chosen.price().times(-1))))
                .toList();
    }
}
