package org.daybank.core.working;

import java.util.Locale;
import org.daybank.core.schema.Scalars;

/**
 * A rule that products and designs are checked against; each family of rules is an enum.
 *
 * <p>The sentences of a rule are templates in the message resource, under {@code check.{family}.{code}.passed} and
 * {@code check.{family}.{code}.failed}.
 */
public interface Rule {
    /** Returns the name of the constant. */
    String name();

    /** Returns the clause of the standard that the rule rests on, or the practice where no standard states it. */
    String source();

    /** Returns the stable code under which the rule appears in answers: {@code coldestOpenCircuitVoltage}. */
    default String code() {
        return Scalars.name((Enum<?>) this);
    }

    /** Returns the family of the rule, from the name of its enum: {@code bank} of {@code BankRule}. */
    default String family() {
        String simple = ((Enum<?>) this).getDeclaringClass().getSimpleName().replaceFirst("Rule$", "");
        return simple.substring(0, 1).toLowerCase(Locale.ROOT) + simple.substring(1);
    }
}
