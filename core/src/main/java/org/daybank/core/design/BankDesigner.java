package org.daybank.core.design;

import java.util.Comparator;
import java.util.List;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.MonthlySun;
import org.jspecify.annotations.Nullable;

/** The job for systems on a bank: loads, bank, array, controller, inverter, proof. */
final class BankDesigner {
    private BankDesigner() {}

    /** The cheapest complete design at the lowest bus voltage that does, with the cheapest of other voltages and chemistries beside it. */
    static SystemDesign design(DesignBrief brief, Catalog catalog) {
        LoadProfile loads = brief.profile();
        MonthlySun sun = ArraySun.of(brief, loads);
        IrradianceDistribution sunshine = ArraySun.spread(brief, sun.plane());
        ModuleYields yields =
                new ModuleYields(brief.site(), sunshine, brief.policy().array());
        Draft draft = Draft.of(brief, new Search(brief, catalog, loads, yields));
        if (draft.chosen().isEmpty()) {
            return incomplete(draft, loads, sun);
        }
        Ratio availability = brief.wishes().availability();
        if (!Proof.wanted(brief)) {
            return tell(draft, catalog, loads, sun, null, null);
        }
        Proof proof = new Proof(brief, catalog, sun.plane());
        if (availability == null) {
            Simulation run = proof.of(draft.chosen().orElseThrow());
            return tell(draft, catalog, loads, sun, new Steering.Outcome(draft, run, true, 1, List.of()), proof);
        }
        return new Steering(
                        draft,
                        larger -> Draft.of(larger, new Search(larger, catalog, larger.profile(), yields)),
                        proof::of,
                        sun.plane())
                .climb(availability)
                .map(outcome -> tell(outcome.draft(), catalog, loads, sun, outcome, proof))
                .orElseThrow();
    }

    /** Nothing is whole: every product of the catalogue held against what is asked at the voltage that came nearest. */
    private static SystemDesign incomplete(Draft draft, LoadProfile loads, MonthlySun sun) {
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
                .batteries(nearest.batteries())
                .controllers(nearest.controllers())
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

    private static SystemDesign tell(
            Draft draft,
            Catalog catalog,
            LoadProfile loads,
            MonthlySun sun,
            Steering.@Nullable Outcome outcome,
            @Nullable Proof proof) {
        DesignBrief brief = draft.brief();
        Search search = draft.search();
        Candidate chosen = draft.chosen().orElseThrow();
        Voltage voltage = chosen.nominalVoltage();
        BankLayout layout = chosen.layout();
        Chemistry chemistry = layout.battery().chemistry();
        EnergyBudget budget = chosen.budget();
        ModuleExtremes extremes = ModuleExtremes.of(
                chosen.charger().array().module(), brief.site(), brief.policy().array());
        ChargerSelection controllers = search.offer(extremes, voltage, chemistry, budget)
                .map(offer -> search.controllers(voltage, layout, offer))
                .orElseThrow();
        ChargerFit charger = controllers.ranked().stream()
                .filter(fit -> fit.product().equals(chosen.charger().product()))
                .findFirst()
                .orElse(chosen.charger());
        return SystemDesignBuilder.builder()
                .brief(brief)
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
                .chargeSettings(search.settings(voltage, chemistry))
                .batteryLife(BankYear.life(brief, chosen, outcome == null ? null : outcome.simulation())
                        .orElse(null))
                .ventilation(Ventilation.of(layout).orElse(null))
                .billOfMaterials(chosen.bill())
                .checks(BankChecks.of(brief, chosen, charger, search.settings(voltage, chemistry), outcome))
                .parts(SystemParts.of(chosen, sun.plane()))
                .availability(outcome == null ? null : outcome.simulation().reliability())
                .frontier(outcome == null ? List.of() : outcome.frontier())
                .generator(
                        outcome == null || proof == null
                                ? null
                                : EngineBackup.of(
                                                brief,
                                                chosen,
                                                search.settings(voltage, chemistry)
                                                        .absorption(),
                                                outcome.simulation(),
                                                engine -> proof.of(chosen, engine))
                                        .orElse(null))
                .alternatives(alternatives(
                        chosen, draft.complete(), brief.policy().system().alternatives()))
                .batteries(search.batteries(voltage, chosen.inverter(), chosen.controllerDraw()))
                .controllers(controllers)
                .inverters(chosen.inverter() == null ? null : search.inverters(voltage, chemistry))
                .build();
    }

    /** Of the controller chosen where it tracks, else of a typical one. */
    private static Ratio trackingEfficiency(DesignBrief brief, ChargerFit charger) {
        return charger.controller().kind().path() == ChargePath.TRACKING
                ? charger.controller().efficiency()
                : brief.policy().array().chargerEfficiency();
    }

    private static List<Alternative> alternatives(Candidate chosen, List<Candidate> complete, int most) {
        return complete.stream()
                .filter(candidate -> !candidate.equals(chosen))
                .sorted(Comparator.comparing(Candidate::price))
                .limit(most)
                .map(candidate -> new Alternative(
                        candidate.nominalVoltage(),
                        candidate.layout().battery().chemistry(),
                        candidate.charger().controller().kind(),
                        candidate.bill(),
                        candidate.price().plus(chosen.price().times(-1))))
                .toList();
    }
}
