/**
 * The loads and what they draw: from the customer's list to the energy that leaves the bank, the peak and the start.
 *
 * <p>A {@link org.daybank.core.load.Load} says what runs, when and how hard it starts; what it leaves out is filled from what is
 * typical of its {@link org.daybank.core.load.LoadKind}. {@link org.daybank.core.load.LoadProfile} spreads the loads over the
 * hours of each month, and gives the {@link org.daybank.core.load.PeakLoad} an inverter must carry and the
 * {@link org.daybank.core.load.EnergyBudget} at the bank behind an {@link org.daybank.core.load.InverterCurve}. The bank, the
 * array and the inverter are sized from these.
 */
@NullMarked
package org.daybank.core.load;

import org.jspecify.annotations.NullMarked;
