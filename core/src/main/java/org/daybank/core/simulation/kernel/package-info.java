/**
 * Many designs through the same hours on bare numbers; not exported.
 *
 * <p>{@link org.daybank.core.simulation.kernel.DesignBlock} holds some hundred designs side by side, one array for each figure,
 * and takes all of them through an hour before it turns to the next;
 * {@link org.daybank.core.simulation.kernel.HourLoops} are the loops over the designs. They say the same as
 * {@code HourlyStep.step} and give the same numbers to the last bit. Names carry the units. Nothing is checked here: the typed
 * face, {@code ManyDesigns}, does that.
 */
@NullMarked
package org.daybank.core.simulation.kernel;

import org.jspecify.annotations.NullMarked;
