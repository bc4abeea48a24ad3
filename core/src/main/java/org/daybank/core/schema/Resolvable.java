package org.daybank.core.schema;

/**
 * An input in which some components, when left out, follow from others.
 *
 * <p>Its accessors return what was given, null for what was left out, so that a copy with one change is the same as the
 * input built anew with that change. Calculations read {@link #resolved()}.
 *
 * @param <R> record of those components, each under the name that it has in the input
 */
public interface Resolvable<R extends Record> {
    /** Returns the components whose defaults follow from others: each as given or, where it was left out, its default. */
    R resolved();
}
