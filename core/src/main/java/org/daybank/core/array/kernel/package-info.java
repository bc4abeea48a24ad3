/**
 * The module's curve on bare numbers, for loops that step through a year by the hour; not exported.
 *
 * <p>Names carry the units. Nothing is checked here: the typed face in {@code org.daybank.core.array} does that.
 */
@NullMarked
package org.daybank.core.array.kernel;

import org.jspecify.annotations.NullMarked;
