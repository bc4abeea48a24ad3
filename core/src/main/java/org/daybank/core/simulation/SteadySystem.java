package org.daybank.core.simulation;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ChargePath;
import org.daybank.core.load.kernel.DemandTable;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.kernel.SharedFacts;
import org.daybank.core.simulation.kernel.SharedFactsBuilder;
import org.daybank.core.simulation.kernel.SharedYear;
import org.daybank.core.site.HourCalendar;

/**
 * A system whose hours need nothing but the array, the bank and one rank of loads, and what all its sizes have in common.
 *
 * @param system that was found to be one
 * @param facts of it
 * @param demand what its loads ask
 * @param depth down to which they may draw the bank
 */
record SteadySystem(SimulatedSystem system, StepFacts facts, DemandTable demand, double depth) {
    private static final int HOURS_OF_A_DAY = 24;

    static SteadySystem of(SimulatedSystem system, ArrayYears array, List<Ratio> snowLoss, SimulationPolicy policy) {
        DemandTable everything = system.loads().everything(system.resolved().inverter());
        DemandTable essentials = system.loads().essentials(system.resolved().inverter());
        boolean noneEssential =
                Arrays.stream(essentials.atBank).flatMapToDouble(Arrays::stream).allMatch(w -> w == 0);
        boolean allEssential = Arrays.deepEquals(everything.atBank, essentials.atBank)
                && Arrays.deepEquals(everything.atLoads, essentials.atLoads);
        Validation checks = new Validation()
                .length("snowLoss", snowLoss, 12)
                .that(
                        system.engine() == null,
                        "engine",
                        ProblemCode.UNSUPPORTED,
                        "engine must be absent when many designs are run")
                .that(
                        system.shore() == null,
                        "shore",
                        ProblemCode.UNSUPPORTED,
                        "shore must be absent when many designs are run")
                .that(
                        system.alternator() == null,
                        "alternator",
                        ProblemCode.UNSUPPORTED,
                        "alternator must be absent when many designs are run")
                .that(
                        system.wells() == null,
                        "wells",
                        ProblemCode.UNSUPPORTED,
                        "wells must be absent when many designs are run: the bank has one")
                .that(
                        system.controller().kind().path() == ChargePath.TRACKING,
                        "controller",
                        ProblemCode.UNSUPPORTED,
                        () -> "controller must track the best point when many designs are run, but %s does not"
                                .formatted(system.controller().model()))
                .that(
                        noneEssential || allEssential,
                        "loads",
                        ProblemCode.UNSUPPORTED,
                        "loads must all be essential, or none, when many designs are run")
                .that(
                        policy.reconnectRise().fraction() == 0,
                        "reconnectRise",
                        ProblemCode.UNSUPPORTED,
                        () ->
                                "reconnectRise must be 0 when many designs are run, so that loads are never cut off,, but was %s."
                                        .formatted(policy.reconnectRise()))
                .that(
                        policy.dischargeLossShare().fraction() == 0,
                        "dischargeLossShare",
                        ProblemCode.UNSUPPORTED,
                        () ->
                                "dischargeLossShare must be 0 when many designs are run, so that losses fall on charging,, but was %s."
                                        .formatted(policy.dischargeLossShare()))
                .that(
                        unheated(system, array),
                        "housing",
                        ProblemCode.UNSUPPORTED,
                        "the bank must never be heated when many designs are run: what a heater draws does not grow with the bank");
        policy.checkStart(checks, "initialCharge", system.depthOfDischarge());
        checks.done();
        StepFacts facts = StepFacts.of(system, policy);
        return new SteadySystem(system, facts, everything, noneEssential ? facts.otherDepth() : facts.essentialDepth());
    }

    private static boolean unheated(SimulatedSystem system, ArrayYears array) {
        for (int year = 0; year < array.count(); year++) {
            BankHours bank = BankHours.of(system.bank(), system.housing(), array.air(year));
            if (Arrays.stream(bank.heater).anyMatch(watts -> watts > 0)) {
                return false;
            }
        }
        return true;
    }

    SharedFacts shared() {
        return SharedFactsBuilder.builder()
                .controllerEfficiency(system.controller().efficiency().fraction())
                .ownWatts(Simulator.controllerWatts(system))
                .capacityWattHours(facts.capacity())
                .chargeEfficiency(facts.chargeEfficiency())
                .taperShare(facts.taperShare())
                .dischargeWatts(facts.dischargeLimit())
                .leakShare(facts.leakShare())
                .build();
    }

    SharedYear year(int number, ArrayYears array, List<Ratio> snowLoss, ArrayPolicy arrayPolicy) {
        HourCalendar calendar = array.calendar(number);
        SharedYear year = new SharedYear(
                array.module(number, snowLoss, arrayPolicy),
                Arrays.stream(Month.values()).mapToInt(calendar::endHour).toArray());
        BankHours bank = BankHours.of(system.bank(), system.housing(), array.air(number));
        for (Month month : Month.values()) {
            double[] atBank = demand.atBank[month.getValue() - 1];
            double[] atLoads = demand.atLoads[month.getValue() - 1];
            for (int hour = calendar.firstHour(month); hour < calendar.endHour(month); hour++) {
                int ofDay = hour % HOURS_OF_A_DAY;
                year.askedWatts[hour] = atBank[ofDay];
                year.perAtBank[hour] = Simulator.perAtBank(atLoads[ofDay], atBank[ofDay]);
            }
        }
        for (int day = 0; day < year.floorShare.length; day++) {
            year.floorShare[day] = 1 - bank.capacityShare[day] * depth;
            year.chargeWatts[day] = bank.chargeLimit[day];
        }
        return year;
    }
}
