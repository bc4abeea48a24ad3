/**
 * The inverter: which ones carry the loads and start them on this bank, how many, and why the others do not.
 *
 * <p>{@link org.daybank.core.inverter.InverterFit} holds one inverter against a need and returns every rule with its margin;
 * {@link org.daybank.core.inverter.InverterSelection} reads the ranked and the rejected off it. Peak, surge and waveform come
 * from {@code load}, the bus window from {@code bank}; the chosen inverter's losses go back into the energy budget.
 */
@NullMarked
package org.daybank.core.inverter;

import org.jspecify.annotations.NullMarked;
