package org.daybank.core.working;

import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * One rule held against one product or design.
 *
 * @param rule stable name of the rule: {@code coldestOpenCircuitVoltage}
 * @param met whether the rule is kept
 * @param actual the figure that was judged; absent for rules without figures
 * @param limit the figure it was held against; absent for rules without figures
 * @param margin signed room to the limit as a share of it, negative when the rule is broken; absent where a share has no
 *     meaning
 * @param sentence the same in plain words
 */
public record Finding(
        String rule,
        boolean met,
        @Nullable Quantity actual,
        @Nullable Quantity limit,
        @Nullable Ratio margin,
        Sentence sentence) {

    /**
     * A rule that a figure stays at or under a limit.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static <Q extends Quantity & Comparable<Q>> Finding atMost(
            String rule, Q actual, Q limit, String sentence, Object... values) {
        return new Finding(
                rule,
                actual.compareTo(limit) <= 0,
                actual,
                limit,
                share(limit.baseValue() - actual.baseValue(), limit),
                Sentence.of(sentence, values));
    }

    /**
     * A rule that a figure stays at or over a limit.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static <Q extends Quantity & Comparable<Q>> Finding atLeast(
            String rule, Q actual, Q limit, String sentence, Object... values) {
        return new Finding(
                rule,
                actual.compareTo(limit) >= 0,
                actual,
                limit,
                share(actual.baseValue() - limit.baseValue(), limit),
                Sentence.of(sentence, values));
    }

    /**
     * A rule that a share stays at or under a limit; its margin is the difference of the two.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static Finding shareAtMost(String rule, Ratio actual, Ratio limit, String sentence, Object... values) {
        return new Finding(
                rule,
                actual.compareTo(limit) <= 0,
                null,
                null,
                Ratio.of(limit.fraction() - actual.fraction()),
                Sentence.of(sentence, values));
    }

    /**
     * A rule that is kept or broken without a figure.
     *
     * @param sentence what to say of it; each {@code %s} takes the next of the values
     */
    public static Finding that(String rule, boolean met, String sentence, Object... values) {
        return new Finding(rule, met, null, null, null, Sentence.of(sentence, values));
    }

    /** A temperature has no share: its zero is a convention. */
    private static @Nullable Ratio share(double room, Quantity limit) {
        return limit.baseValue() > 0 && !(limit instanceof Temperature) ? Ratio.of(room / limit.baseValue()) : null;
    }
}
