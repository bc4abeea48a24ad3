/**
 * The array: what a module gives at any irradiance, cell temperature and voltage, and how many of them a load calls for.
 *
 * <p>A {@link org.daybank.core.array.PvModule} is a data sheet. {@link org.daybank.core.array.SingleDiode} is the same module as
 * an electric circuit, fitted to the sheet, and {@link org.daybank.core.array.IvCurve} its current against voltage under one
 * sky: that is what tells a controller that tracks the best point from one that holds the array at the bank's voltage.
 * {@link org.daybank.core.array.CellTemperature} says how warm the cells get, {@link org.daybank.core.array.ShadeComparison} what
 * modules in unlike light give in one string and one by one. Site and sky come from the rooms before this
 * one, the bank's voltages from the bank; charge controllers, inverters and wiring are held against the array that is chosen
 * here.
 */
@NullMarked
package org.daybank.core.array;

import org.jspecify.annotations.NullMarked;
