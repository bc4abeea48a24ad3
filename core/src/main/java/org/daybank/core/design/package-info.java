/**
 * The whole job: from a brief to a complete design, in the order a planner takes the steps.
 *
 * <p>{@link org.daybank.core.design.SystemDesigner} runs it: loads, nominal voltage, inverter, bank, array, charge controller,
 * and back again until what the parts themselves draw is in the budget. Out comes a
 * {@link org.daybank.core.design.SystemDesign} with parts and prices, the working behind each number, every product that was
 * passed over and why, and the {@link org.daybank.core.design.Hazards}.
 */
@NullMarked
package org.daybank.core.design;

import org.jspecify.annotations.NullMarked;
