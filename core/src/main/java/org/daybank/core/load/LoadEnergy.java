package org.daybank.core.load;

import org.daybank.core.quantity.Energy;

/**
 * One line of the table of loads.
 *
 * @param name of the load
 * @param dailyEnergy what it takes on a mean day of a month in which it is used, at the load
 */
public record LoadEnergy(String name, Energy dailyEnergy) {}
