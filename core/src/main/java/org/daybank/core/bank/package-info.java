/**
 * The battery bank: how much capacity the loads need, which batteries make it up, and how long they last.
 *
 * <p>From the energy budget (or bare figures) comes a {@link org.daybank.core.bank.BankDemand};
 * {@link org.daybank.core.bank.BankCapacity} finds the rated capacity that covers it, by the logic of IEEE 1013: autonomy and
 * depth, daily depth, surge, then temperature and margin. {@link org.daybank.core.bank.BankFit} holds one battery against a
 * need and returns every rule with its margin; {@link org.daybank.core.bank.BankSelection} reads the ranked and the rejected
 * off it. {@link org.daybank.core.bank.BatteryLife} tells years, replacements and the price of a kilowatt-hour from the
 * cycles that a day, or a simulation, puts a bank through. What is typical of a chemistry comes from the table
 * {@code chemistries.csv} beside this package; a data sheet always wins over it. Array, charger, inverter and wiring are held
 * against the bank that is chosen here.
 */
@NullMarked
package org.daybank.core.bank;

import org.jspecify.annotations.NullMarked;
