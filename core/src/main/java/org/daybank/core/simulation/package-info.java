/**
 * One system through the hours of one or many years: how often the lights go out, how deep the bank goes, what is thrown
 * away, what an engine burns.
 *
 * <p>{@link org.daybank.core.simulation.SunnyYears} turns weather onto the array once;
 * {@link org.daybank.core.simulation.ArrayYears} is what modules and controllers make of it. A
 * {@link org.daybank.core.simulation.SimulatedSystem} says what stands there,
 * {@link org.daybank.core.simulation.SimulationPolicy} what is assumed, and
 * {@link org.daybank.core.simulation.Simulator} steps through the hours: {@code HourlyStep.step} is the whole model of an
 * hour. Each {@link org.daybank.core.simulation.SimulatedYear} holds an {@link org.daybank.core.simulation.EnergyLedger} that
 * closes; a {@link org.daybank.core.simulation.Simulation} is what many years say together. The whole job proves its design
 * with it.
 *
 * <p>{@link org.daybank.core.simulation.ManyDesigns} runs one system with its array and bank in thousands of sizes through the
 * same hours and says which of them do: each on a {@link org.daybank.core.simulation.DesignGrid}, or only the line of a
 * {@link org.daybank.core.simulation.SizingContour} on which a loss-of-load probability is just reached. Its loops are in
 * {@code kernel}; they say the same as {@code HourlyStep.step}, and a property holds both to the same bits.
 */
@NullMarked
package org.daybank.core.simulation;

import org.jspecify.annotations.NullMarked;
