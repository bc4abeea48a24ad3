package org.daybank.core.simulation;

import static org.daybank.core.working.Message.value;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.load.kernel.DemandTable;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** Steps a system through the hours of years that follow each other. Deterministic; safe for any number of threads. */
public final class Simulator {
    private static final int HOURS_OF_A_DAY = 24;
    private static final double WATTS_OF_A_KILOWATT = 1000;

    /** A load that lacks less than this share of what it asks lacks nothing. */
    private static final double LACKING = 1e-9;

    private static final TimeSpan LONGEST_RUN = TimeSpan.days(2);

    private final SimulatedSystem system;
    private final ArrayYears array;
    private final List<Ratio> snowLoss;
    private final ArrayPolicy arrayPolicy;
    private final StepFacts facts;
    private final BankStore store;
    private final HourlyStep step;
    private final DemandTable everything;
    private final DemandTable essentials;
    private final double[] outsideWatts = new double[HOURS_OF_A_DAY];
    private final double controllerWatts;
    private double outage;

    private Simulator(
            SimulatedSystem system,
            ArrayYears array,
            List<Ratio> snowLoss,
            ArrayPolicy arrayPolicy,
            SimulationPolicy policy) {
        this.system = system;
        this.array = array;
        this.snowLoss = snowLoss;
        this.arrayPolicy = arrayPolicy;
        this.facts = StepFacts.of(system, policy);
        this.store = new BankStore(facts.capacity(), system.wells());
        this.step = new HourlyStep(facts, store, system.engine());
        this.everything = system.loads().everything(system.resolved().inverter());
        this.essentials = system.loads().essentials(system.resolved().inverter());
        this.controllerWatts = controllerWatts(system);
        ShorePower shore = system.shore();
        Alternator alternator = system.alternator();
        double volts = system.bank().trueNominal().volts();
        for (int hour = 0; hour < HOURS_OF_A_DAY; hour++) {
            outsideWatts[hour] =
                    (shore == null ? 0 : shore.watts(hour)) + (alternator == null ? 0 : alternator.watts(volts, hour));
        }
    }

    /** What all controllers draw themselves. */
    static double controllerWatts(SimulatedSystem system) {
        return system.controller()
                .selfConsumption()
                .times(system.array().stringsOnEach().size())
                .watts();
    }

    /**
     * Runs a system through years.
     *
     * @param sun on the array, year after year
     * @param snowLoss share of the yield that is lost under snow, twelve from January
     * @throws org.daybank.core.schema.InvalidInput when the bank begins below the depth at which its loads are cut off
     */
    public static Simulation run(
            SimulatedSystem system,
            SunnyYears sun,
            List<Ratio> snowLoss,
            ArrayPolicy arrayPolicy,
            SimulationPolicy policy) {
        return run(system, ArrayYears.of(system, sun, arrayPolicy), snowLoss, arrayPolicy, policy);
    }

    /** The same with what one module brings known already. */
    public static Simulation run(
            SimulatedSystem system,
            ArrayYears array,
            List<Ratio> snowLoss,
            ArrayPolicy arrayPolicy,
            SimulationPolicy policy) {
        new Validation().length("snowLoss", snowLoss, 12).done();
        Validation checks = new Validation();
        policy.checkStart(checks, "initialCharge", system.depthOfDischarge());
        checks.done();
        Simulator simulator = new Simulator(system, array, snowLoss, arrayPolicy, policy);
        simulator.store.fill(policy.initialCharge().fraction());
        if (policy.settle()) {
            simulator.year(0);
            simulator.outage = 0;
        }
        List<SimulatedYear> years = new ArrayList<>();
        for (int year = 0; year < array.count(); year++) {
            years.add(simulator.year(year));
        }
        return new Simulation(Reliability.of(years), simulator.checks(years), years);
    }

    private SimulatedYear year(int year) {
        HourCalendar calendar = array.calendar(year);
        ArrayHours brought = array.through(year, system.array(), system.controller(), snowLoss, arrayPolicy);
        BankHours bank = BankHours.of(system.bank(), system.housing(), array.air(year));
        YearTally tally = new YearTally(calendar);
        double heldBefore = store.level();
        for (Month month : Month.values()) {
            int end = calendar.endHour(month) / HOURS_OF_A_DAY;
            for (int day = calendar.firstHour(month) / HOURS_OF_A_DAY; day < end; day++) {
                day(day, month.getValue() - 1, brought, bank, tally);
            }
        }
        return tally.year(year, facts.capacity(), heldBefore, store.level(), bank.unpublishedDays);
    }

    private void day(int day, int month, ArrayHours brought, BankHours bank, YearTally tally) {
        step.day(bank.capacityShare[day], bank.chargeLimit[day]);
        double own = controllerWatts + bank.heater[day];
        for (int ofDay = 0; ofDay < HOURS_OF_A_DAY; ofDay++) {
            int hour = day * HOURS_OF_A_DAY + ofDay;
            double arrayWatts = brought.atBank(hour, store.level() / facts.capacity());
            double essential = essentials.atBank[month][ofDay];
            double other = Math.max(0, everything.atBank[month][ofDay] - essential);
            boolean ran = step.engineOn;
            step.step(arrayWatts, own, essential, other, outsideWatts[ofDay]);
            tally.array[month] += arrayWatts + brought.converted[hour] + brought.clipped[hour];
            tally.controllerLoss += brought.converted[hour];
            tally.clipped += brought.clipped[hour];
            book(month, ofDay, essential, other, tally);
            bookEngine(month, ran, tally);
            tally.level(hour, month, store.level() / facts.capacity());
        }
    }

    /** What the loads got and lacked, at their own terminals. */
    private void book(int month, int ofDay, double essential, double other, YearTally tally) {
        double essentialAtLoads = essentials.atLoads[month][ofDay];
        double otherAtLoads = everything.atLoads[month][ofDay] - essentialAtLoads;
        double lacksEssential = perAtBank(essentialAtLoads, essential) * step.lackedEssential;
        double lacksOther = perAtBank(otherAtLoads, other) * step.lackedOther;
        tally.demand[month] += essentialAtLoads + otherAtLoads;
        tally.served[month] += essentialAtLoads + otherAtLoads - lacksEssential - lacksOther;
        tally.unservedEssential += lacksEssential;
        tally.unservedOther += lacksOther;
        boolean essentialLacks = step.lackedEssential > LACKING * essential;
        if (essentialLacks || step.lackedOther > LACKING * other) {
            tally.lossHours[month]++;
            tally.essentialLossHours += essentialLacks ? 1 : 0;
            outage++;
            tally.longestOutage = Math.max(tally.longestOutage, outage);
        } else {
            outage = 0;
        }
        tally.servedAtBank += step.servedEssential + step.servedOther;
        tally.ownDraw += step.servedOwn;
        tally.spilled[month] += step.spilled;
        tally.outOfBank += step.outOfBank;
        tally.batteryLoss +=
                step.intoBank * (1 - facts.chargeEfficiency()) + step.outOfBank * (1 / facts.dischargeEfficiency() - 1);
        tally.selfDischarge += step.leaked;
        tally.shore += step.fromShore;
    }

    /** What reaches the loads of a Wh that leaves the bank for them. */
    static double perAtBank(double atLoads, double atBank) {
        return atBank > 0 ? atLoads / atBank : 0;
    }

    private void bookEngine(int month, boolean ran, YearTally tally) {
        EngineRule engine = system.engine();
        if (engine == null || !step.engineOn) {
            return;
        }
        tally.engineStarts += ran ? 0 : 1;
        tally.engineHours[month]++;
        tally.engine[month] += step.fromEngine;
        tally.fuelLitres[month] += engine.litresPerHourPerKilowatt()
                        * engine.power().watts()
                        / WATTS_OF_A_KILOWATT
                + engine.litresPerKilowattHour()
                        * step.fromEngine
                        / engine.chargerEfficiency().fraction()
                        / WATTS_OF_A_KILOWATT;
    }

    private List<Check> checks(List<SimulatedYear> years) {
        List<Check> checks = new ArrayList<>();
        int below = years.stream().mapToInt(SimulatedYear::daysBelowPublished).sum();
        Temperature coldest =
                system.bank().battery().resolved().capacityByTemperature().coldest();
        checks.add(
                below == 0
                        ? Check.that(SimulationRule.CAPACITY_IN_THE_COLD, true, value("coldest", coldest))
                        : Check.that(
                                SimulationRule.CAPACITY_IN_THE_COLD,
                                false,
                                value("below", below),
                                value("coldest", coldest)));
        EngineRule engine = system.engine();
        if (engine != null) {
            checks.add(engineStops(engine));
        }
        return checks;
    }

    /** Whether an engine, carrying the mean load of the heaviest month, ever charges the bank to where it stops. */
    private Check engineStops(EngineRule engine) {
        BankLayout bank = system.bank();
        double mean = 0;
        for (double[] hours : everything.atBank) {
            double sum = 0;
            for (double watts : hours) {
                sum += watts;
            }
            mean = Math.max(mean, sum / HOURS_OF_A_DAY);
        }
        double left = (facts.engineWatts() - mean - controllerWatts) * facts.chargeEfficiency();
        double stop = engine.stopAbove().fraction();
        @Nullable
        Double needed = left <= 0
                ? null
                : hoursToCharge(
                        Math.min(
                                left,
                                bank.maximumChargeCurrent()
                                        .times(bank.trueNominal())
                                        .watts()),
                        engine.startBelow().fraction(),
                        stop);
        return needed == null
                ? Check.that(
                                SimulationRule.ENGINE_STOP,
                                false,
                                value("enginePower", Math.round(facts.engineWatts())),
                                value("load", Math.round(mean + controllerWatts)),
                                value("stopAbove", engine.stopAbove()))
                        .variant("never")
                : Check.atMost(
                        SimulationRule.ENGINE_STOP,
                        TimeSpan.hours(needed),
                        LONGEST_RUN,
                        value("startBelow", engine.startBelow()),
                        value("stopAbove", engine.stopAbove()));
    }

    /** Hour by hour, as the bank takes it. */
    private double hoursToCharge(double watts, double from, double to) {
        double held = from * facts.capacity();
        int hours = 0;
        while (held < to * facts.capacity() && hours < 10_000) {
            held += Math.min(watts, facts.taperShare() * (facts.capacity() - held));
            hours++;
        }
        return hours;
    }
}
