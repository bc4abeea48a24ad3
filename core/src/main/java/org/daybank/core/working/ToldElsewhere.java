package org.daybank.core.working;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a component of a result that its reader has already: what went in, or the data sheet of a product named beside it.
 * Answers over the wire leave it out.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface ToldElsewhere {}
