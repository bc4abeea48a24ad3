/**
 * An engine generator for the months that the sun does not cover: how large, how many hours, how much fuel, and whether more
 * modules would be cheaper.
 *
 * <p>A {@link org.daybank.core.generator.GeneratorNeed} says what it must charge and carry and where it stands, a {@link
 * org.daybank.core.generator.GeneratorPolicy} what is assumed of engines. {@link org.daybank.core.generator.GeneratorSize} is
 * the next customary size with its load at work, its months and its cost, and hands on the {@link
 * org.daybank.core.simulation.EngineRule} with which a simulation starts and stops it. {@link
 * org.daybank.core.generator.EngineOrModules} holds its fuel and wear against the annuity of the {@link
 * org.daybank.core.generator.MoreModules} that would do without it.
 */
@NullMarked
package org.daybank.core.generator;

import org.jspecify.annotations.NullMarked;
