/**
 * The array: what a module gives at any irradiance, cell temperature and voltage, and how many of them a load calls for.
 *
 * <p>A {@link org.daybank.core.array.PvModule} is a data sheet. Site and sky come from the rooms before this one, the bank's
 * voltages from the bank; charge controllers, inverters and wiring are held against the array that is chosen here.
 */
@NullMarked
package org.daybank.core.array;

import org.jspecify.annotations.NullMarked;
