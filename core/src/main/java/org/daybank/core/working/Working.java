package org.daybank.core.working;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Scalars;

/**
 * The steps behind a result, in the order in which they were taken.
 *
 * @param steps formula, substituted numbers, result and source of each
 */
public record Working(List<Step> steps) {
    /** Keeps a copy of the steps. */
    public Working {
        steps = List.copyOf(steps);
    }

    /** A working without steps, to add to. */
    public static Builder builder() {
        return new Builder();
    }

    /** Writes steps one after the other; numbers are shown to four significant digits. */
    public static final class Builder {
        private final List<Step> steps = new ArrayList<>();

        private Builder() {}

        /**
         * Adds a step. Each {@code %s} in {@code substitution} takes the next of the values.
         *
         * @param values quantities, ratios, numbers or text
         */
        public Builder step(
                String name, String formula, String source, Object result, String substitution, Object... values) {
            Object[] shown = new Object[values.length];
            for (int i = 0; i < values.length; i++) {
                shown[i] = show(values[i]);
            }
            steps.add(new Step(name, formula, substitution.formatted(shown), show(result), source));
            return this;
        }

        /** Adds all the steps of another working. */
        public Builder all(Working other) {
            steps.addAll(other.steps());
            return this;
        }

        /** The working so far. */
        public Working build() {
            return new Working(steps);
        }

        private static String show(Object value) {
            if (value instanceof Quantity quantity) {
                return quantity.rounded();
            }
            if (value instanceof Double number) {
                return Ratio.of(number).significant(4);
            }
            if (value instanceof Ratio ratio) {
                return ratio.significant(4);
            }
            if (value instanceof Enum<?> constant) {
                return Scalars.name(constant);
            }
            return value.toString();
        }
    }
}
