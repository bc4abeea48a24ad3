/**
 * The battery bank: how much capacity the loads need, and which batteries make it up.
 *
 * <p>From the energy budget (or bare figures) comes a {@link org.daybank.core.bank.BankDemand};
 * {@link org.daybank.core.bank.BankCapacity} finds the rated capacity that covers it, by the logic of IEEE 1013: autonomy and
 * depth, daily depth, surge, then temperature and margin. What is typical of a chemistry comes from the table
 * {@code chemistries.csv} beside this package; a data sheet always wins over it. Array, charger, inverter and wiring are held
 * against the bank that is chosen here.
 */
@NullMarked
package org.daybank.core.bank;

import org.jspecify.annotations.NullMarked;
