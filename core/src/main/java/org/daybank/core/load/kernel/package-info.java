/**
 * What the loads draw on bare numbers, for loops that step through a year by the hour; not exported.
 *
 * <p>Names carry the units. Nothing is checked here: the typed face in {@code org.daybank.core.load} does that.
 */
@NullMarked
package org.daybank.core.load.kernel;

import org.jspecify.annotations.NullMarked;
