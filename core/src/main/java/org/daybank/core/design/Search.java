package org.daybank.core.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PathComparison;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.bank.BankNeedBuilder;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerNeedBuilder;
import org.daybank.core.inverter.AcSource;
import org.daybank.core.inverter.AcSourceBuilder;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterNeed;
import org.daybank.core.inverter.InverterNeedBuilder;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.load.StandingDraw;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.sun.IrradianceDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the cheapest parts that keep every rule at one bus voltage with one chemistry. Exact over the rules, since prices
 * add up; what costs at least as much as the best so far is not looked at.
 */
final class Search {
    private static final Power UNLIMITED = Power.kilowatts(1e6);
    private static final Current ANY_CURRENT = Current.kiloamperes(1e6);

    private final DesignBrief brief;
    private final Catalog catalog;
    private final LoadProfile loads;
    private final IrradianceDistribution sunshine;
    private final Temperature lowest;
    private final List<ModuleExtremes> extremes;

    /** What a module brings through a tracking controller without loss. */
    private final IdentityHashMap<PvModule, ModuleYield> trackingYields = new IdentityHashMap<>();

    private final IdentityHashMap<PvModule, ModuleOutput> outputs = new IdentityHashMap<>();

    private final Map<DirectKey, ModuleYield> directYields = new HashMap<>();

    Search(DesignBrief brief, Catalog catalog, LoadProfile loads, IrradianceDistribution sunshine) {
        this.brief = brief;
        this.catalog = catalog;
        this.loads = loads;
        this.sunshine = sunshine;
        this.lowest = brief.bank()
                .lowest(
                        brief.site().months().coldestMonth(),
                        brief.site().recordLow(),
                        brief.policy().system().coldSpell());
        this.extremes = catalog.modules().stream()
                .map(module ->
                        ModuleExtremes.of(module, brief.site(), brief.policy().array()))
                .toList();
    }

    /** The cheapest complete system, if there is one. */
    Optional<Candidate> cheapest(Voltage voltage, Chemistry chemistry) {
        if (!loads.needsInverter()) {
            return withInverter(voltage, chemistry, null, null);
        }
        Candidate best = null;
        for (InverterFit inverter : inverters(voltage, chemistry).ranked()) {
            if (best != null && inverter.price().compareTo(best.price()) >= 0) {
                break;
            }
            best = cheaper(
                    best, withInverter(voltage, chemistry, inverter, best).orElse(null));
        }
        return Optional.ofNullable(best);
    }

    private static @Nullable Candidate cheaper(@Nullable Candidate best, @Nullable Candidate next) {
        return next != null && (best == null || next.price().compareTo(best.price()) < 0) ? next : best;
    }

    /** Every inverter of the catalogue held against the loads and a bank. */
    InverterSelection inverters(Voltage voltage, Chemistry chemistry) {
        InverterNeed need = InverterNeedBuilder.builder()
                .peak(loads.peak())
                .largestLoad(PeakLoad.ofLargest(brief.loads()))
                .startDuration(brief.policy().load().startDuration())
                .sineLoads(loads.budget().sineLoads())
                .service(brief.service())
                .nominalVoltage(voltage)
                .bankCurrentLimit(brief.policy().system().bankCurrent())
                .highestBankVoltage(settings(voltage, chemistry).absorptionWhenCold())
                .hottestAir(brief.site().recordHigh())
                .elevation(brief.site().elevation())
                .functions(brief.wishes().inverterFunctions())
                .acSource(acSource())
                .build();
        return InverterSelection.of(need, catalog.inverters(), brief.policy().inverter());
    }

    /** Shore power gives no more than it has; the grid gives what is asked. */
    private @Nullable AcSource acSource() {
        ShorePower shore = brief.shore();
        if (shore != null) {
            return AcSourceBuilder.builder()
                    .current(shore.power().dividedBy(brief.service().voltage()))
                    .build();
        }
        return brief.kind() == SystemKind.GRID_BACKUP
                ? AcSourceBuilder.builder().build()
                : null;
    }

    /** The charging set-points of a bank at the site. */
    ChargeSettings settings(Voltage voltage, Chemistry chemistry) {
        boolean indoors = brief.bank().location() == BankLocation.INDOORS;
        Temperature hottest = indoors
                ? warmer(brief.site().months().warmestMonth(), lowest)
                : warmer(brief.site().recordHigh(), lowest);
        return ChargeSettings.of(
                new ChargeSettings.Facts(chemistry, voltage, lowest, hottest),
                brief.policy().charge());
    }

    private static Temperature warmer(Temperature a, Temperature b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /**
     * The cheapest with what its controllers draw in its budget. What draws more asks for more, so that the price never falls
     * as more is counted: a system that agrees with what is counted is the cheapest of all that draw as much or more, and
     * none costs less than the cheapest with nothing counted. Between the two, every smaller draw is looked at.
     */
    private Optional<Candidate> withInverter(
            Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter, @Nullable Candidate known) {
        Candidate free = pass(voltage, chemistry, inverter, Power.ZERO, UNLIMITED, known);
        Candidate best = free;
        Power counted = Power.ZERO;
        while (best != null && best.controllerDraw().compareTo(counted) > 0) {
            counted = best.controllerDraw();
            best = pass(voltage, chemistry, inverter, counted, UNLIMITED, known);
        }
        if (free == null) {
            return Optional.empty();
        }
        for (Power less : draws(voltage, chemistry, counted)) {
            if (best != null && best.price().equals(free.price())) {
                break;
            }
            best = cheaper(best, pass(voltage, chemistry, inverter, less, less, cheaper(known, best)));
        }
        return Optional.ofNullable(best);
    }

    /** What the controllers on offer may draw together, below a limit, the most first. */
    private List<Power> draws(Voltage voltage, Chemistry chemistry, Power below) {
        return controllers(voltage, chemistry)
                .flatMap(controller -> IntStream.rangeClosed(1, controller.mostInParallel())
                        .mapToObj(count -> controller.selfConsumption().times(count)))
                .filter(draw -> draw.compareTo(below) < 0)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /**
     * The cheapest with some draw of controllers in its budget.
     *
     * @param mostDraw of the controllers
     * @param known what costs no less is not looked for
     */
    private @Nullable Candidate pass(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable InverterFit inverter,
            Power controllerDraw,
            Power mostDraw,
            @Nullable Candidate known) {
        Candidate best = null;
        for (boolean heated : List.of(false, true)) {
            List<Battery> batteries = catalog.batteries().stream()
                    .filter(battery -> battery.chemistry() == chemistry && runsHeated(battery) == heated)
                    .toList();
            if (batteries.isEmpty()) {
                continue;
            }
            EnergyBudget budget = budget(inverter, standing(heated, controllerDraw));
            BankNeed need = bankNeed(voltage, inverter, budget);
            List<BankFit> banks =
                    BankSelection.of(need, batteries, brief.policy().bank()).ranked();
            if (banks.isEmpty()) {
                continue;
            }
            List<ArrayOffer> offers = offers(voltage, chemistry, budget);
            if (known != null
                    && atLeast(inverter, banks.get(0), offers) >= known.price().minorUnits()) {
                continue;
            }
            ArrayChoices arrays = arrays(voltage, chemistry, offers);
            Optional<ChargerFit> cheapestArray = arrays.cheapest(ANY_CURRENT, mostDraw);
            for (BankFit bank : banks) {
                for (BankFit strings = bank; cheapestArray.isPresent() && strings.fits(); ) {
                    BankLayout layout = Objects.requireNonNull(strings.layout());
                    Optional<ChargerFit> charger = arrays.cheapest(layout.maximumChargeCurrent(), mostDraw);
                    BankFit fit = strings;
                    best = cheaper(
                            best,
                            charger.map(found -> complete(voltage, budget, inverter, fit, found))
                                    .orElse(null));
                    if (charger.equals(cheapestArray)
                            || (best != null && layout.price().compareTo(best.price()) >= 0)) {
                        break;
                    }
                    // one more string takes more of the array's current
                    strings = BankFit.of(need, bank.battery(), brief.policy().bank(), layout.parallel() + 1);
                }
            }
        }
        return best;
    }

    /** Every battery of the catalogue held against what it must carry, a heater of its own reckoned in. */
    BankSelection batteries(Voltage voltage, @Nullable InverterFit inverter, Power controllerDraw) {
        BankNeed unheated = bankNeed(voltage, inverter, budget(inverter, standing(false, controllerDraw)));
        BankNeed heated = bankNeed(voltage, inverter, budget(inverter, standing(true, controllerDraw)));
        return BankSelection.of(catalog.batteries().stream()
                .map(battery -> BankFit.of(
                        runsHeated(battery) ? heated : unheated,
                        battery,
                        brief.policy().bank()))
                .toList());
    }

    private boolean runsHeated(Battery battery) {
        return battery.heater() != null && lowest.compareTo(brief.bank().heaterSetPoint()) < 0;
    }

    private EnergyBudget budget(@Nullable InverterFit inverter, StandingDraw standing) {
        return inverter == null ? loads.budget(standing) : loads.budget(inverter.curve(), standing);
    }

    /** Controllers draw all year; a heater by how cold it is around the bank, in the worst run as much colder as the coldest spell is. */
    private StandingDraw standing(boolean heated, Power controllerDraw) {
        if (!heated) {
            return StandingDraw.steady(controllerDraw);
        }
        TemperatureDifference spell = brief.site()
                .months()
                .coldestMonth()
                .minus(brief.site().recordLow())
                .times(brief.policy().system().coldSpell());
        List<Power> meanDay = new ArrayList<>();
        List<Power> worstRun = new ArrayList<>();
        for (Temperature air : brief.site().months().meanAir()) {
            meanDay.add(controllerDraw.plus(heater(brief.bank().around(air))));
            worstRun.add(controllerDraw.plus(heater(brief.bank().around(air.minus(spell)))));
        }
        return new StandingDraw(meanDay, worstRun);
    }

    private Power heater(Temperature around) {
        Temperature setPoint = brief.bank().heaterSetPoint();
        return around.compareTo(setPoint) >= 0
                ? Power.ZERO
                : brief.bank().heatLoss().times(setPoint.minus(around));
    }

    /** What a bank must carry, at its terminals. */
    BankNeed bankNeed(Voltage voltage, @Nullable InverterFit inverter, EnergyBudget budget) {
        MonthBudget run = budget.heaviestRun();
        Power continuous = budget.dcPeak();
        Power surge = budget.dcPeak();
        if (inverter != null) {
            double efficiency = inverter.inverter().fullLoadEfficiency().fraction();
            continuous = continuous.plus(inverter.curve().drawFor(budget.peak().running()));
            surge = surge.plus(budget.peak().surge().dividedBy(efficiency));
        }
        return BankNeedBuilder.builder()
                .dailyEnergy(budget.heaviestMonth().dailyEnergy())
                .worstDailyEnergy(run.worstDailyEnergy())
                .nominalVoltage(voltage)
                .lowest(lowest)
                .runningPower(run.runningPower())
                .continuousPower(continuous)
                .surgePower(surge)
                .heatLoss(brief.bank().heatLoss())
                .heaterSetPoint(brief.bank().heaterSetPoint())
                .build();
    }

    /** What the parts cost at the least, in minor units: the cheapest bank and modules without any controller. */
    private static long atLeast(@Nullable InverterFit inverter, BankFit bank, List<ArrayOffer> offers) {
        long modules = offers.stream()
                .mapToLong(ArrayOffer::leastPriceMinorUnits)
                .min()
                .orElse(0);
        return modules
                + Objects.requireNonNull(bank.layout()).price().minorUnits()
                + (inverter == null ? 0 : inverter.price().minorUnits());
    }

    /** Every module with as many as the need asks for; none where no number of any would do. */
    List<ArrayOffer> offers(Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        return extremes.stream()
                .flatMap(module -> offer(module, voltage, chemistry, budget).stream())
                .toList();
    }

    /** Every module with every controller for this bus and chemistry; the bank's charging limit still aside. */
    private ArrayChoices arrays(Voltage voltage, Chemistry chemistry, List<ArrayOffer> offers) {
        return new ArrayChoices(
                chargerNeed(voltage, chemistry, null),
                offers,
                controllers(voltage, chemistry).toList(),
                brief.policy().charger());
    }

    private Stream<ChargeController> controllers(Voltage voltage, Chemistry chemistry) {
        return catalog.controllers().stream()
                .filter(controller -> controller.busVoltages().contains(voltage)
                        && controller.chemistries().contains(chemistry));
    }

    /** A module with as many as the design month asks for; none when no number of it would do. */
    Optional<ArrayOffer> offer(ModuleExtremes module, Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        ArrayNeed need = arrayNeed(voltage, chemistry, budget);
        ArraySize tracking = ArraySize.of(
                need, trackingYield(module.module()), brief.policy().array());
        if (!tracking.possible()) {
            return Optional.empty();
        }
        // a module of no voltage group is refused at the bank's own voltage, however many there are
        int direct = module.module().nominalGroup() == null
                ? tracking.modules()
                : ArraySize.of(
                                need,
                                directYield(module, voltage, chemistry),
                                brief.policy().array())
                        .modules();
        return Optional.of(new ArrayOffer(
                module, tracking.exactModules(), direct, brief.policy().array().whenNew(), sunshine));
    }

    private ModuleOutput output(PvModule module) {
        return outputs.computeIfAbsent(
                module, any -> ModuleOutput.of(any, brief.policy().array().yieldModel()));
    }

    /** What a module brings at its best point, through a controller without loss. */
    ModuleYield trackingYield(PvModule module) {
        return trackingYields.computeIfAbsent(
                module,
                any -> ModuleYield.tracking(
                        output(any),
                        brief.site(),
                        sunshine,
                        brief.policy().array().withChargerEfficiency(Ratio.ONE)));
    }

    /**
     * What a module brings at a bank's own voltage; while the sun shines that lies between nominal and absorption. A module of
     * no voltage group stands in the shortest string that still charges in the hottest sun.
     */
    ModuleYield directYield(ModuleExtremes module, Voltage voltage, Chemistry chemistry) {
        return directYields.computeIfAbsent(
                new DirectKey(module.module(), voltage, chemistry), any -> direct(module, voltage, chemistry));
    }

    private ModuleYield direct(ModuleExtremes module, Voltage voltage, Chemistry chemistry) {
        Voltage trueNominal = chemistry.trueNominal(voltage);
        Voltage absorption = settings(voltage, chemistry).absorption();
        Voltage group = module.module().nominalGroup();
        double series = group == null
                ? Math.ceil(absorption.dividedBy(module.hottestMaximumPower()))
                : Math.rint(voltage.dividedBy(group));
        return ModuleYield.direct(
                output(module.module()),
                (int) Math.max(1, series),
                trueNominal,
                trueNominal.plus(absorption).dividedBy(2),
                brief.site(),
                sunshine,
                brief.policy().array());
    }

    /** What tracking gains for a module on a bank, through a controller of an efficiency. */
    PathComparison comparison(ModuleExtremes module, Voltage voltage, Chemistry chemistry, Ratio efficiency) {
        return PathComparison.of(
                trackingYield(module.module()).times(efficiency), directYield(module, voltage, chemistry));
    }

    /** A module on a bank. */
    private record DirectKey(PvModule module, Voltage voltage, Chemistry chemistry) {}

    /** What an alternator brings spares the array: it counts as if it were drawn less. */
    private ArrayNeed arrayNeed(Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        Alternator alternator = brief.alternator();
        Energy brought = alternator == null ? Energy.ZERO : alternator.daily().times(chemistry.trueNominal(voltage));
        return new ArrayNeed(
                budget.months().stream()
                        .map(month -> less(month.dailyEnergy(), brought))
                        .toList(),
                budget.months().stream().map(MonthBudget::afterDark).toList(),
                chemistry);
    }

    private static Energy less(Energy drawn, Energy brought) {
        return drawn.compareTo(brought) <= 0 ? Energy.ZERO : drawn.minus(brought);
    }

    /** What a controller must do for a bank; without a bank, its charging limits stay open. */
    ChargerNeed chargerNeed(Voltage voltage, Chemistry chemistry, @Nullable BankLayout bank) {
        ChargerNeedBuilder need = ChargerNeedBuilder.builder()
                .nominalVoltage(voltage)
                .chemistry(chemistry)
                .chargingVoltage(settings(voltage, chemistry).absorptionWhenHot())
                .hottestAir(brief.site().recordHigh())
                .functions(brief.wishes().controllerFunctions());
        if (bank != null) {
            need.maximumChargeCurrent(bank.maximumChargeCurrent());
        }
        return need.build();
    }

    private Candidate complete(
            Voltage voltage, EnergyBudget budget, @Nullable InverterFit inverter, BankFit bank, ChargerFit charger) {
        BankLayout layout = Objects.requireNonNull(bank.layout());
        return new Candidate(voltage, budget, inverter, bank, layout, size(charger, layout, budget), charger);
    }

    /** Need and yield of the array as it is laid out, through the controller as its data sheet has it. */
    private ArraySize size(ChargerFit fit, BankLayout layout, EnergyBudget budget) {
        Chemistry chemistry = layout.battery().chemistry();
        PvModule module = fit.array().module();
        ModuleYield moduleYield = switch (fit.controller().kind().path()) {
            case TRACKING -> trackingYield(module).times(fit.controller().efficiency());
            case DIRECT -> directYield(extremesOf(module), layout.nominalVoltage(), chemistry);
        };
        return ArraySize.of(
                        arrayNeed(layout.nominalVoltage(), chemistry, budget),
                        moduleYield,
                        brief.policy().array())
                .withModules(fit.array().modules());
    }

    private ModuleExtremes extremesOf(PvModule module) {
        return ModuleExtremes.of(module, brief.site(), brief.policy().array());
    }
}
