/**
 * Sweeps: one calculator asked for many cases.
 *
 * <p>A {@link org.daybank.core.sweep.Sweep} takes a case (any record: the facts and policies of a calculator) and a function
 * of it, names by path what varies and what comes out, and says how the cases are chosen: every point of a grid, or so many
 * drawn by a {@link org.daybank.core.sweep.Sampling}. {@link org.daybank.core.sweep.Sweep#compile()} checks it all and turns
 * paths into setters once; {@link org.daybank.core.sweep.CompiledSweep} then gives its rows as a stream, row by row, or as
 * text, in order and in parallel. A row depends on its number and the seed alone: any range of rows can be made anywhere,
 * at any time, on any number of threads.
 *
 * <p>{@link org.daybank.core.sweep.Uncertainty} sums up what a sweep of distributions shows: percentiles of each output,
 * and which input matters most.
 */
@NullMarked
package org.daybank.core.sweep;

import org.jspecify.annotations.NullMarked;
