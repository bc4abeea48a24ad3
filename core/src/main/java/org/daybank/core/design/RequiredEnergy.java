package org.daybank.core.design;

import org.daybank.core.load.EnergyBudget;
import org.daybank.core.sun.MonthlySun;

/**
 * What is known of need and irradiation before any product is selected.
 *
 * @param sun irradiation on the array, by month
 * @param budget energy of the loads
 */
public record RequiredEnergy(MonthlySun sun, EnergyBudget budget) {}
