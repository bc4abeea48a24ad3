package org.daybank.core.simulation.kernel;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * What all designs have in common in all hours. Sizes of banks count in banks of the one that is described here.
 *
 * @param controllerEfficiency of what the modules bring
 * @param ownWatts what the system's own parts draw; they may empty the bank below its floor
 * @param capacityWattHours of one bank
 * @param chargeEfficiency what is stored of what goes in
 * @param taperShare share of what it lacks that a bank takes in an hour at the absorption voltage
 * @param dischargeWatts most that one bank gives
 * @param leakShare share of what a bank holds that is lost in an hour
 */
@RecordBuilder
public record SharedFacts(
        double controllerEfficiency,
        double ownWatts,
        double capacityWattHours,
        double chargeEfficiency,
        double taperShare,
        double dischargeWatts,
        double leakShare)
        implements SharedFactsBuilder.With {}
