package org.daybank.core.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.BestTilt;
import org.daybank.core.sun.Exposure;
import org.daybank.core.sun.HourlySky;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;
import org.daybank.core.working.Finding;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Sentence;
import org.jspecify.annotations.Nullable;

/** Runs the whole job: a brief and a catalogue in, a complete design out. Deterministic; safe for any number of threads. */
public final class SystemDesigner {
    private SystemDesigner() {}

    /**
     * The cheapest complete design at the lowest bus voltage that does, with the cheapest of other voltages and chemistries
     * beside it.
     *
     * @return a design whose {@link SystemDesign#complete()} says whether every part was found; a brief that nothing satisfies
     *     is no error
     * @throws org.daybank.core.working.InvalidInput when a month of the site gets more sun than there is at its latitude
     */
    public static SystemDesign design(DesignBrief brief, Catalog catalog) {
        LoadProfile loads = brief.profile();
        MonthlySun sun = sunOnArray(brief, loads);
        IrradianceDistribution sunshine = sunshine(brief, sun.plane());
        Draft draft = Draft.of(brief, new Search(brief, catalog, loads, sunshine));
        if (draft.chosen().isEmpty()) {
            return incomplete(draft, catalog, loads, sun);
        }
        Ratio availability = brief.wishes().availability();
        if (!Proof.wanted(brief)) {
            return tell(draft, catalog, loads, sun, null);
        }
        Proof proof = new Proof(brief, catalog, sun.plane());
        if (availability == null) {
            Simulation run = proof.of(draft.chosen().orElseThrow());
            return tell(draft, catalog, loads, sun, new Steering.Outcome(draft, run, true, 1, List.of()));
        }
        return new Steering(
                        draft,
                        larger -> Draft.of(larger, new Search(larger, catalog, larger.profile(), sunshine)),
                        proof::of,
                        sun.plane())
                .climb(availability)
                .map(outcome -> tell(outcome.draft(), catalog, loads, sun, outcome))
                .orElseThrow();
    }

    private static SystemDesign incomplete(Draft draft, Catalog catalog, LoadProfile loads, MonthlySun sun) {
        return SystemDesignBuilder.builder()
                .brief(draft.brief())
                .complete(false)
                .missing(passedOver(draft, catalog, loads))
                .sun(sun)
                .energyBudget(loads.budget())
                .checks(List.of())
                .frontier(List.of())
                .alternatives(List.of())
                .build();
    }

    private static List<NominalVoltage.PassedOver> passedOver(Draft draft, Catalog catalog, LoadProfile loads) {
        return draft.without().stream()
                .map(voltage -> new NominalVoltage.PassedOver(
                        voltage, obstacles(draft.search(), draft.brief(), catalog, loads, voltage)))
                .toList();
    }

    private static MonthlySun sunOnArray(DesignBrief brief, LoadProfile loads) {
        Angle wished = brief.array().azimuth();
        Angle azimuth = wished == null ? Plane.equatorward(brief.site().latitude()) : wished;
        Angle tilt = brief.array().tilt();
        if (tilt != null) {
            return PlaneOfArray.monthly(
                    brief.site(), new Plane(tilt, azimuth), brief.policy().sun());
        }
        List<Energy> need =
                loads.budget().months().stream().map(MonthBudget::dailyEnergy).toList();
        return BestTilt.forNeed(brief.site(), azimuth, brief.policy().sun(), need);
    }

    /** How the sunshine on the array is spread: by the hours of a weather year where there is one. */
    private static IrradianceDistribution sunshine(DesignBrief brief, Plane plane) {
        WeatherYear weather = brief.weather();
        if (weather == null) {
            return IrradianceDistribution.of(brief.site(), plane, brief.policy().sun());
        }
        Exposure exposure = SunnyYears.exposure(brief.site(), plane);
        return IrradianceDistribution.of(
                HourlySky.of(weather, brief.policy().sun()).on(exposure), weather);
    }

    private static SystemDesign tell(
            Draft draft, Catalog catalog, LoadProfile loads, MonthlySun sun, Steering.@Nullable Outcome outcome) {
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
                .map(offer -> ChargerSelection.of(
                        search.chargerNeed(voltage, chemistry, layout),
                        offer,
                        catalog.controllers(),
                        brief.policy().charger()))
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
                .nominalVoltage(new NominalVoltage(voltage, passedOver(draft, catalog, loads)))
                .bank(chosen.bank())
                .array(charger.array())
                .moduleExtremes(extremes)
                .charger(charger)
                .inverter(chosen.inverter())
                .monthlyBalance(chosen.size())
                .trackingGain(search.comparison(extremes, voltage, chemistry, trackingEfficiency(brief, charger)))
                .recovery(recovery(chosen))
                .chargeSettings(search.settings(voltage, chemistry))
                .ventilation(Ventilation.of(layout).orElse(null))
                .billOfMaterials(chosen.bill())
                .checks(checks(brief, chosen, charger, search.settings(voltage, chemistry), outcome))
                .parts(SystemParts.of(chosen, sun.plane()))
                .availability(outcome == null ? null : outcome.simulation().reliability())
                .frontier(outcome == null ? List.of() : outcome.frontier())
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

    /** Time to refill the deepest discharge from the surplus of the design month. */
    private static @Nullable TimeSpan recovery(Candidate chosen) {
        ArraySize.MonthlyYield month = chosen.size().inDesignMonth();
        double surplus = month.yield().wattHours() - month.need().wattHours();
        if (surplus <= 0) {
            return null;
        }
        Chemistry chemistry = chosen.layout().battery().chemistry();
        double emptied = Objects.requireNonNull(chosen.bank().capacity())
                        .autonomyCharge()
                        .times(chemistry.trueNominal(chosen.nominalVoltage()))
                        .wattHours()
                / chemistry.traits().energyEfficiency().fraction();
        return TimeSpan.days(emptied / surplus);
    }

    private static List<Finding> checks(
            DesignBrief brief,
            Candidate chosen,
            ChargerFit charger,
            ChargeSettings settings,
            Steering.@Nullable Outcome outcome) {
        List<Finding> checks = new ArrayList<>();
        brief.loads().stream()
                .filter(load -> load.supply() == Supply.DC)
                .forEach(load -> checkSupply(load, settings, checks));
        Current least = chosen.layout().minimumChargeCurrent();
        if (least.amperes() > 0) {
            checks.add(Finding.atLeast(
                    "minimumChargeCurrent",
                    charger.chargingCurrent(),
                    least,
                    "In full sun %s flow into the bank; it stays healthy with %s. A bank charged more slowly wants a generator or fewer days of autonomy.",
                    charger.chargingCurrent(),
                    least));
        }
        Ratio worn = wornDepth(brief, chosen);
        checks.add(Finding.that(
                "wornDepth",
                worn.compareTo(Ratio.ONE) <= 0,
                "Once the bank is worn to %s of its capacity, the autonomy takes %s of what it then holds.",
                brief.policy().bank().endOfLifeFraction(),
                worn));
        TimeSpan recovery = recovery(chosen);
        TimeSpan longest = brief.policy().system().longestRecovery();
        checks.add(
                recovery == null
                        ? Finding.that(
                                "recovery",
                                false,
                                "In the design month the array has no surplus to refill the bank from its deepest discharge.")
                        : Finding.atMost(
                                "recovery",
                                recovery,
                                longest,
                                "In the design month the array takes %s to refill the bank from its deepest discharge; more than %s wants a larger array or a generator.",
                                recovery,
                                longest));
        if (outcome != null) {
            checks.addAll(outcome.simulation().checks());
            Ratio asked = brief.wishes().availability();
            if (asked != null) {
                checks.add(reached(asked, outcome));
            }
        }
        return checks;
    }

    private static Finding reached(Ratio asked, Steering.Outcome outcome) {
        Ratio availability = outcome.simulation().reliability().availability();
        return Finding.that(
                "availability",
                outcome.reached(),
                outcome.reached()
                        ? "Every load gets all it asks in %s of the hours; %s was asked for. Designs simulated: %s."
                        : "Every load gets all it asks in %s of the hours; %s was asked for and not reached. Designs simulated: %s; a higher limit (policy mostSimulated), other products or a generator may reach it.",
                availability,
                asked,
                outcome.simulated());
    }

    /** Whether a DC load runs on the bank's own voltage, from the disconnect to charging on the coldest day. */
    private static void checkSupply(Load load, ChargeSettings settings, List<Finding> checks) {
        Voltage highest = load.highestSupply();
        if (highest != null) {
            checks.add(Finding.atMost(
                    "highestSupply",
                    settings.absorptionWhenCold(),
                    highest,
                    "Charging on the coldest day lifts the bus to %s; %s withstands %s. Where it does not, it needs a DC converter.",
                    settings.absorptionWhenCold(),
                    load.name(),
                    highest));
        }
        Voltage lowest = load.lowestSupply();
        if (lowest != null) {
            checks.add(Finding.atLeast(
                    "lowestSupply",
                    settings.disconnect(),
                    lowest,
                    "Before the disconnect the bus falls to %s; %s runs from %s. Where it does not, it needs a DC converter.",
                    settings.disconnect(),
                    load.name(),
                    lowest));
        }
    }

    /** What the autonomy takes of the bank that is laid out, once it is worn and as cold as it gets. */
    private static Ratio wornDepth(DesignBrief brief, Candidate chosen) {
        BankCapacity capacity = Objects.requireNonNull(chosen.bank().capacity());
        double left =
                chosen.layout().capacityAt(capacity.demand().runningCurrent()).ampereHours()
                        * capacity.temperatureFactor().fraction()
                        * brief.policy().bank().endOfLifeFraction().fraction();
        return Ratio.of(capacity.autonomyCharge().ampereHours() / left);
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

    /** Why nothing is complete at a voltage: the rules that the nearest inverter, battery or controller breaks. */
    private static List<Finding> obstacles(
            Search search, DesignBrief brief, Catalog catalog, LoadProfile loads, Voltage voltage) {
        Chemistry chemistry = brief.wishes().chemistries().get(0);
        if (loads.needsInverter()) {
            var inverters = search.inverters(voltage, chemistry);
            if (inverters.ranked().isEmpty()) {
                return nearest("inverter", atVoltage(inverters.rejected(), "nominalVoltage"));
            }
        }
        BankSelection banks = search.batteries(voltage, null, Power.ZERO);
        List<Rejection> unusable = Stream.concat(
                        banks.rejected().stream(),
                        banks.ranked().stream()
                                .filter(fit -> !brief.wishes()
                                        .chemistries()
                                        .contains(fit.battery().chemistry()))
                                .map(fit -> new Rejection(fit.product(), List.of())))
                .toList();
        if (unusable.size() == catalog.batteries().size()) {
            return nearest("battery", atVoltage(banks.rejected(), "seriesCount"));
        }
        if (search.offers(voltage, chemistry, loads.budget()).isEmpty()) {
            return List.of(
                    Finding.that(
                            "array",
                            false,
                            "No number of any module on offer covers every month: in one, something must run and no sun falls on the array."));
        }
        return List.of(Finding.that(
                "chargeController",
                false,
                "No charge controller with any module of the catalogue fits a %s bank of the chemistries asked for.",
                voltage));
    }

    /** The broken rules of a product, led by its name. */
    private static List<Finding> named(Rejection rejection) {
        return rejection.broken().stream()
                .map(finding -> new Finding(
                        finding.rule(),
                        false,
                        finding.actual(),
                        finding.limit(),
                        finding.margin(),
                        Sentence.of("The nearest, %s: %s", rejection.product(), finding.sentence())))
                .toList();
    }

    /** Products for another voltage are no near misses. */
    private static List<Rejection> atVoltage(List<Rejection> rejected, String rule) {
        return rejected.stream().filter(rejection -> !breaks(rejection, rule)).toList();
    }

    private static List<Finding> nearest(String part, List<Rejection> rejected) {
        return rejected.stream()
                // a battery of unknown capacity is not held against every rule: it only seems near
                .min(Comparator.comparing((Rejection rejection) -> breaks(rejection, "capacityInTheCold"))
                        .thenComparing(rejection -> rejection.broken().size())
                        .thenComparing(SystemDesigner::worstMargin, Comparator.reverseOrder()))
                .map(SystemDesigner::named)
                .filter(broken -> !broken.isEmpty())
                .orElseGet(() -> List.of(Finding.that(part, false, "The catalogue has no %s for this.", part)));
    }

    private static boolean breaks(Rejection rejection, String rule) {
        return rejection.broken().stream().anyMatch(finding -> finding.rule().equals(rule));
    }

    /** Signed room to the limit of the rule that is broken the furthest. */
    private static double worstMargin(Rejection rejection) {
        return rejection.broken().stream()
                .mapToDouble(finding ->
                        finding.margin() == null ? 0 : finding.margin().fraction())
                .min()
                .orElse(0);
    }
}
