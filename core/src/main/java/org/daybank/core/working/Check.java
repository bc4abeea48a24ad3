package org.daybank.core.working;

import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * One rule evaluated for one product or design.
 *
 * @param rule stable name of the rule: {@code coldestOpenCircuitVoltage}
 * @param passed whether the rule is met
 * @param value the figure that was judged; absent for rules without figures
 * @param limit the figure it was held against; absent for rules without figures
 * @param margin signed room to the limit as a share of it, negative when the rule is broken; absent where a share has no
 *     meaning
 * @param message the same as one sentence
 */
public record Check(
        String rule,
        boolean passed,
        @Nullable Quantity value,
        @Nullable Quantity limit,
        @Nullable Ratio margin,
        Sentence message) {

    /**
     * A rule that a figure stays at or under a limit.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static <Q extends Quantity & Comparable<Q>> Check atMost(
            String rule, Q value, Q limit, String sentence, Object... values) {
        return new Check(
                rule,
                value.compareTo(limit) <= 0,
                value,
                limit,
                share(limit.baseValue() - value.baseValue(), limit),
                Sentence.of(sentence, values));
    }

    /**
     * A rule that a figure stays at or over a limit.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static <Q extends Quantity & Comparable<Q>> Check atLeast(
            String rule, Q value, Q limit, String sentence, Object... values) {
        return new Check(
                rule,
                value.compareTo(limit) >= 0,
                value,
                limit,
                share(value.baseValue() - limit.baseValue(), limit),
                Sentence.of(sentence, values));
    }

    /**
     * A rule that a share stays at or under a limit; its margin is the difference of the two.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static Check shareAtMost(String rule, Ratio value, Ratio limit, String sentence, Object... values) {
        return new Check(
                rule,
                value.compareTo(limit) <= 0,
                null,
                null,
                Ratio.of(limit.fraction() - value.fraction()),
                Sentence.of(sentence, values));
    }

    /**
     * A rule that is kept or broken without a figure.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static Check that(String rule, boolean passed, String sentence, Object... values) {
        return new Check(rule, passed, null, null, null, Sentence.of(sentence, values));
    }

    /** A temperature has no share: its zero is a convention. */
    private static @Nullable Ratio share(double room, Quantity limit) {
        return limit.baseValue() > 0 && !(limit instanceof Temperature) ? Ratio.of(room / limit.baseValue()) : null;
    }
}
