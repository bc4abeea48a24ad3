package org.daybank.core.grid;

import java.time.Month;

/**
 * A month of the years.
 *
 * @param year in which it lies, counted from 0
 * @param month which
 * @param flows of energy
 */
public record FlowMonth(int year, Month month, EnergyFlows flows) {}
