/**
 * How results explain themselves: what every other package says its reasons with.
 *
 * <ul>
 *   <li>{@link org.daybank.core.working.Working}: the steps of a calculation, each with formula, substituted numbers, result
 *       and source;
 *   <li>{@link org.daybank.core.working.Hazard}: what can hurt someone or something, with what to do about it;
 *   <li>{@link org.daybank.core.working.Check}: one rule held against one product or design, with the margin to its limit;
 *   <li>{@link org.daybank.core.schema.Problem} and {@link org.daybank.core.schema.InvalidInput}: what is wrong with an
 *       input, all of it at once; {@link org.daybank.core.schema.Validation} gathers them in constructors;
 *   <li>{@link org.daybank.core.schema.Assumed}: the default, range and source of a value that may be left out, standing on
 *       the record component it belongs to; {@link org.daybank.core.schema.Assumption} is what is told of it afterwards.
 * </ul>
 *
 * <p>A record whose components carry {@code @Assumed} resolves what was left out in its own constructor: nulls go in, none
 * come out.
 */
@NullMarked
package org.daybank.core.working;

import org.jspecify.annotations.NullMarked;
