package org.daybank.core.schema;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record component that may be left out, and states what is then assumed. Default and source are written here and
 * nowhere else: constructors, the list of assumptions and the contract all read them from here.
 *
 * <p>A default with a {@link #value()} is a constant: the constructor puts it in place of what was left out
 * ({@link Defaults#otherwise}), and the accessor never returns null. A default without one follows from other components:
 * the component stays null, and {@link Resolvable#resolved()} returns what it follows to, so that a changed component never
 * leaves a stale default behind.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Assumed {
    /** The constant default as text, in the notation of the component's type; empty when it follows from other components. */
    String value() default "";

    /** The origin of the default, or how it follows from other components. */
    String source();
}
