/**
 * The design of a whole system for a brief.
 *
 * <p>{@link org.daybank.core.design.SystemDesigner} selects and evaluates the parts: loads, system nominal voltage, inverter,
 * bank, array and charge controller, the power that the parts draw included. The result is a
 * {@link org.daybank.core.design.DesignOutcome}: a design with parts and prices, the working behind each number, its hazards
 * and every product rejected, or the reasons why there is none. {@link org.daybank.core.design.SystemSimulator} simulates a
 * system whose parts are given.
 */
@NullMarked
package org.daybank.core.design;

import org.jspecify.annotations.NullMarked;
