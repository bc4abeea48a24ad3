package org.daybank.core.schema;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The accepted range of a record component. The range is written here and nowhere else: the constructor
 * ({@link Validation#of}), the JSON binder and the contract read it from here.
 *
 * <p>Limits are text in the notation of the component's own type, as in {@code minimum = "0.1 d"}. On a list they apply to
 * each element; on money they are an amount without currency, accepted in every currency; on a record without an order (a ratio for each battery family, say) to each component. The names are those
 * of JSON Schema.
 *
 * <pre>{@code
 * record Lamp(@Bounds(exclusiveMinimum = "0 W", maximum = "500 W") Power power) {}
 * }</pre>
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Bounds {
    /** The smallest accepted value; empty for no limit. */
    String minimum() default "";

    /** The value that must be exceeded; empty for no limit. */
    String exclusiveMinimum() default "";

    /** The largest accepted value; empty for no limit. */
    String maximum() default "";

    /** The value that must not be reached; empty for no limit. */
    String exclusiveMaximum() default "";

    /** The smallest accepted number of elements of a list. */
    int minimumItems() default 0;

    /** The largest accepted number of elements of a list. */
    int maximumItems() default Integer.MAX_VALUE;

    /** The range a planner would call sensible, for reading; empty where there is nothing to say. */
    String sensible() default "";
}
