package org.daybank.core.simulation;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;

/**
 * The result of simulating one size of array and bank among many.
 *
 * @param array power of its modules at standard test conditions
 * @param bank what its bank holds, at the current that the loads draw
 * @param lossOfLoad hours a year in which a load did not get all it asked
 * @param lossOfLoadProbability such hours over all hours
 * @param unserved what the loads lacked in a year
 * @param spilled what nobody had use for in a year
 * @param throughput what came out of the bank in a year
 * @param lowestStateOfCharge of the bank at the end of any hour
 */
public record SizedSystemResult(
        Power array,
        Energy bank,
        TimeSpan lossOfLoad,
        Ratio lossOfLoadProbability,
        Energy unserved,
        Energy spilled,
        Energy throughput,
        Ratio lowestStateOfCharge) {}
