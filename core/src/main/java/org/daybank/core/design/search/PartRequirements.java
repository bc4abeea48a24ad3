package org.daybank.core.design.search;

import org.daybank.core.array.ArrayNeed;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.Power;

/**
 * The requirements of the bank and the array with one inverter, the power drawn by the charge controllers included.
 *
 * @param controllerDraw power drawn by the charge controllers
 * @param budget energy that leaves the bank, that power included
 * @param bank requirements of the bank
 * @param array requirements of the array
 */
public record PartRequirements(Power controllerDraw, EnergyBudget budget, BankNeed bank, ArrayNeed array) {}
