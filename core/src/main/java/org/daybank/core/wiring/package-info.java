/**
 * Conductors, overcurrent devices and disconnects of every circuit, what they lose and what their metal costs.
 *
 * <p>From a {@link org.daybank.core.wiring.Circuit} (voltages, currents and length) and a
 * {@link org.daybank.core.wiring.WiringPolicy} comes a {@link org.daybank.core.wiring.CircuitSizing}: the ampacity asked for by
 * each rule, the size that each rule alone would take, the size chosen, its drop, its loss and its price, the device that
 * protects it, and what the next size up would save. {@link org.daybank.core.wiring.WiringPlan} is all circuits of a system
 * with what can hurt in them; {@link org.daybank.core.wiring.StringVoltages} holds one array at higher string voltages against the
 * length of its run.
 *
 * <p>Two sets of rules, IEC and NFPA 70, stand as tables beside this package, each with its source. The figures choose a cable to
 * plan and to price with: local codes and a licensed electrician decide.
 */
@NullMarked
package org.daybank.core.wiring;

import org.jspecify.annotations.NullMarked;
