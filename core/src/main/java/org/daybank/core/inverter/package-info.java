/**
 * The inverter: which ones carry the loads and start them on this bank, how many, and why the others do not.
 *
 * <p>On a bank: {@link org.daybank.core.inverter.InverterFit} holds one inverter against a need and returns every rule with its margin;
 * {@link org.daybank.core.inverter.InverterSelection} reads the ranked and the rejected off it. Peak, surge and waveform come
 * from {@code load}, the bus window from {@code bank}; the chosen inverter's losses go back into the energy budget. A service of
 * several lines is made by one unit or by units stacked in {@link org.daybank.core.inverter.Stacking series, parallel or three
 * phase}; an {@link org.daybank.core.inverter.AcSource} says what is wished of shore power or a generator.
 *
 * <p>Without a bank: {@link org.daybank.core.inverter.StringInverterFit} and {@link org.daybank.core.inverter.MicroinverterFit}
 * hold inverters that feed the grid against a {@link org.daybank.core.inverter.GridArray} and a {@link
 * org.daybank.core.inverter.GridService}; {@link org.daybank.core.inverter.GridInverterSelection} puts both side by side.
 */
@NullMarked
package org.daybank.core.inverter;

import org.jspecify.annotations.NullMarked;
