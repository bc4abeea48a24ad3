/**
 * What a grid changes: how much of the array's energy is used at once, how much is bought and sold, what the bill becomes, and
 * how long the essential loads run when the grid is gone.
 *
 * <p>A {@link org.daybank.core.grid.FeedingArray} makes {@link org.daybank.core.grid.GridHours} of the sun and the loads; {@link
 * org.daybank.core.grid.GridFlows} sums them by month, and {@link org.daybank.core.grid.GridBill} prices them by a {@link
 * org.daybank.core.grid.Tariff}. {@link org.daybank.core.grid.BackupHours} begins an outage at every hour of a year; {@link
 * org.daybank.core.grid.BusbarCheck} and {@link org.daybank.core.grid.CouplingCheck} hold an inverter against the panel that it
 * feeds and against the inverter and bank behind which it runs in an outage.
 */
@NullMarked
package org.daybank.core.grid;

import org.jspecify.annotations.NullMarked;
