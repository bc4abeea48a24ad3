/**
 * The charge controller: which ones fit the array and the bank, how many, with which strings on each, and why the others do
 * not.
 *
 * <p>{@link org.daybank.core.charger.ChargerFit} holds one controller against one module and a need, and returns every rule
 * with its margin; {@link org.daybank.core.charger.ChargerSelection} reads the ranked and the rejected off it. Module extremes
 * come from {@code array}, charging voltages from {@code bank}; the chosen controller's own consumption goes back into the
 * energy budget.
 */
@NullMarked
package org.daybank.core.charger;

import org.jspecify.annotations.NullMarked;
