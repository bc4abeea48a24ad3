/**
 * Value objects for everything that is measured: one record for each dimension, one finite number named by its unit.
 *
 * <p>The unit stands in the name of every factory and accessor ({@code Power.kilowatts(1.2)}, {@code p.watts()}), physics
 * is the type system ({@code Power × TimeSpan → Energy}), and text goes both ways: {@code Power.parse("1.2 kW")} reads
 * UCUM codes and the way people write, {@code toString} prints what {@code parse} reads back to an equal value. Nothing here
 * knows of batteries or sunshine; every other package stands on this one.
 *
 * <p>{@link org.daybank.core.quantity.Quantity} is what the dimensional values have in common;
 * {@link org.daybank.core.quantity.Ratio}, {@link org.daybank.core.quantity.Latitude},
 * {@link org.daybank.core.quantity.Longitude} and {@link org.daybank.core.quantity.Money} are values without a unit of
 * this kind.
 */
@NullMarked
package org.daybank.core.quantity;

import org.jspecify.annotations.NullMarked;
