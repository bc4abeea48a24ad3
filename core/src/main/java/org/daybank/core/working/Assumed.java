package org.daybank.core.working;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record component that may be left out, and says what is then assumed. Default, range and source stand here and
 * nowhere else: constructors, the list of assumptions and the contract all read them from here.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Assumed {
    /** The default as text, read by the component's own type; empty when the default follows from other components. */
    String value() default "";

    /** The least accepted value as text; empty for no bound. */
    String least() default "";

    /** The greatest accepted value as text; empty for no bound. */
    String most() default "";

    /** The range a planner would call sensible, for reading; empty where there is nothing to say. */
    String sensible() default "";

    /** Where the default comes from, or how it follows from other components. */
    String source();
}
