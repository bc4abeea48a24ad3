package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;

/**
 * What came of one year.
 *
 * @param number of the year, from 0
 * @param ledger where the energy came from and went to
 * @param demand what the loads asked
 * @param unservedEssential what the essential loads lacked
 * @param unservedOther what the other loads lacked
 * @param lossOfLoad hours in which a load did not get all it asked
 * @param lossOfEssentialLoad hours in which an essential load did not
 * @param lossOfLoadProbability such hours over all hours
 * @param longestOutage hours without a break in which a load did not get all it asked; one that began in the year before counts
 *     whole
 * @param lowestStateOfCharge of the bank at the end of any hour
 * @param meanStateOfCharge of the bank
 * @param stateOfChargeShares share of the hours that end with a state of charge in each tenth, the emptiest first
 * @param throughput what came out of the bank
 * @param equivalentFullCycles throughput over capacity
 * @param cycles of the state of charge, by their range
 * @param engineTime how long an engine ran
 * @param engineStarts how often it started
 * @param fuel that it burned
 * @param daysBelowPublished days on which the bank was colder than anything published about its capacity, which was then taken
 *     for that of the coldest published temperature
 * @param months from January
 */
public record SimulatedYear(
        int number,
        EnergyLedger ledger,
        Energy demand,
        Energy unservedEssential,
        Energy unservedOther,
        TimeSpan lossOfLoad,
        TimeSpan lossOfEssentialLoad,
        Ratio lossOfLoadProbability,
        TimeSpan longestOutage,
        Ratio lowestStateOfCharge,
        Ratio meanStateOfCharge,
        List<Ratio> stateOfChargeShares,
        Energy throughput,
        double equivalentFullCycles,
        List<CycleCount> cycles,
        TimeSpan engineTime,
        int engineStarts,
        Volume fuel,
        int daysBelowPublished,
        List<SimulatedMonth> months) {
    /** Keeps copies. */
    public SimulatedYear {
        stateOfChargeShares = List.copyOf(stateOfChargeShares);
        cycles = List.copyOf(cycles);
        months = List.copyOf(months);
    }

    /** What the loads got of what they asked; all, when they asked nothing. */
    public Ratio servedShare() {
        return demand.wattHours() == 0 ? Ratio.ONE : Ratio.of(ledger.served().dividedBy(demand));
    }
}
