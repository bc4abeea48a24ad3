/**
 * The charge controller: which ones fit the array and the bank, how many, with which strings on each, what they bring in a
 * year, and why the others do not fit.
 *
 * <p>{@link org.daybank.core.charger.ChargerFit} holds one controller against one module and a need, and returns every rule
 * with its margin; {@link org.daybank.core.charger.ChargerSelection} reads the ranked and the rejected off it, and holds the
 * yearly energies of the ranked against the best. Module extremes and yields come from {@code array}, charging voltages from
 * {@code bank}; the chosen controller's own consumption goes back into the energy budget. Where diversion is asked for,
 * {@link org.daybank.core.charger.Diversion} sizes the load.
 */
@NullMarked
package org.daybank.core.charger;

import org.jspecify.annotations.NullMarked;
