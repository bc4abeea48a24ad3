package org.daybank.core.design;

import org.daybank.core.inverter.GridInverterSelection;

/**
 * Every product of the catalogue, ranked or rejected for an array that feeds the grid.
 *
 * @param modules with the selected inverter
 * @param inverters with the selected module
 */
public record GridSelections(ModuleSelection modules, GridInverterSelection inverters) {}
