/**
 * What an input is: which components a record has, which of them may be left out and what is then assumed, which values are
 * accepted, and what is reported when they are not.
 *
 * <p>Entry points:
 *
 * <ul>
 *   <li>{@link org.daybank.core.schema.InvalidInput}: thrown when an input can never be right, with every
 *       {@link org.daybank.core.schema.Problem} at once;
 *   <li>{@link org.daybank.core.schema.Defaults}: the record of nothing but defaults, and the assumptions of an input;
 *   <li>{@link org.daybank.core.schema.RecordSchema}: the one description of a record type, which constructors, sweeps and
 *       the JSON binder read.
 * </ul>
 *
 * <p>An input keeps what was said: a component that was left out, and whose default follows from others, stays left out
 * ({@link org.daybank.core.schema.Resolvable}). Changing one component therefore calculates the same as building the input
 * anew with that change.
 */
@NullMarked
package org.daybank.core.schema;

import org.jspecify.annotations.NullMarked;
