package org.daybank.core.sweep;

import java.util.Arrays;
import java.util.List;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * The values that one place of a case takes.
 *
 * <p>On a grid an axis is its values one after the other. Where cases are drawn, a list gives each of its values as often as
 * any other, a range gives every value between its ends as likely as any other (a logarithmic one: every order of
 * magnitude), and {@link #drawn} follows a distribution, which a grid cannot.
 */
public sealed interface Axis {
    /** Longest list and finest range. */
    int MOST = 1_000_000;

    /** These values, in this order. */
    static Axis of(Object... values) {
        return new Listed(Arrays.asList(values));
    }

    /** So many values at equal distances, the ends included. */
    static <T> Axis range(T from, T to, int count) {
        return new Range(from, to, count, false);
    }

    /** So many values, each the same multiple of the one before, the ends included; both ends above zero. */
    static <T> Axis logRange(T from, T to, int count) {
        return new Range(from, to, count, true);
    }

    /** Values drawn from a distribution. */
    static Axis drawn(Distribution distribution) {
        return new Drawn(distribution);
    }

    /**
     * Values one by one; of any type, names and yes or no included.
     *
     * @param values at least one
     */
    record Listed(
            @Bounds(minimumItems = 1, maximumItems = Axis.MOST)
            List<Object> values) implements Axis {
        /** Keeps a copy. */
        public Listed {
            Validation.of(Listed.class, values).done();
            values = List.copyOf(values);
        }
    }

    /**
     * Values from one end to the other.
     *
     * @param from first value: a quantity, a ratio, a number or money
     * @param to last value, of the same type
     * @param count how many on a grid, at least 1; a single one is {@code from}
     * @param logarithmic whether each value is the same multiple of the one before
     */
    record Range(
            Object from,
            Object to,
            @Bounds(minimum = "1", maximum = "1000000") int count,
            boolean logarithmic) implements Axis {
        /** Refuses what is no range. */
        public Range {
            Validation.of(Range.class, from, to, count, logarithmic)
                    .that(
                            from == null
                                    || to == null
                                    || (isNumber(from) && isNumber(to) && from.getClass() == to.getClass()),
                            "to",
                            ProblemCode.INCONSISTENT,
                            () -> "from and to must be two quantities or numbers of one kind but are %s and %s"
                                    .formatted(from, to))
                    .that(
                            !logarithmic
                                    || !isNumber(from)
                                    || !isNumber(to)
                                    || (NumberForm.number(from) > 0 && NumberForm.number(to) > 0),
                            "from",
                            ProblemCode.OUT_OF_RANGE,
                            () -> "both ends of a logarithmic range must be above zero but are %s and %s"
                                    .formatted(from, to))
                    .done();
        }

        private static boolean isNumber(Object value) {
            return value != null && NumberForm.isNumber(value);
        }
    }

    /**
     * Values by a distribution.
     *
     * @param distribution how likely each value is
     */
    record Drawn(Distribution distribution) implements Axis {
        /** Refuses an absent distribution. */
        public Drawn {
            Validation.of(Drawn.class, distribution).done();
        }
    }
}
