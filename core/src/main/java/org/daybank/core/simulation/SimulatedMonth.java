package org.daybank.core.simulation;

import java.time.Month;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;

/**
 * One month of a simulated year, or the mean of such months.
 *
 * @param month which
 * @param array what the array could have brought
 * @param demand what the loads asked
 * @param served what they got
 * @param spilled what nobody had use for
 * @param engine what an engine gave through its charger
 * @param lossOfLoad hours in which a load did not get all it asked
 * @param lowestStateOfCharge of the bank at the end of any hour
 * @param meanStateOfCharge of the bank
 * @param engineTime how long an engine ran
 * @param fuel that it burned
 */
public record SimulatedMonth(
        Month month,
        Energy array,
        Energy demand,
        Energy served,
        Energy spilled,
        Energy engine,
        TimeSpan lossOfLoad,
        Ratio lowestStateOfCharge,
        Ratio meanStateOfCharge,
        TimeSpan engineTime,
        Volume fuel) {}
