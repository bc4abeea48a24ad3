package org.daybank.core.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;

/**
 * One rule evaluated for one product or design.
 *
 * @param rule the rule
 * @param passed whether the rule is met
 * @param value the figure that was evaluated; absent for rules without figures
 * @param limit the figure it was compared with; absent for rules without figures
 * @param margin signed room to the limit as a share of it, negative when the rule is not met; absent where a share has no
 *     meaning
 * @param message the same as one sentence
 */
public record Check(
        Rule rule,
        boolean passed,
        Optional<Quantity> value,
        Optional<Quantity> limit,
        Optional<Ratio> margin,
        Message message) {

    /**
     * Returns the check of a rule that a figure does not exceed a limit.
     *
     * @param named values for the placeholders of the sentence beside {@code {value}} and {@code {limit}}
     */
    public static <Q extends Quantity & Comparable<Q>> Check atMost(
            Rule rule, Q value, Q limit, Message.Value... named) {
        return compared(rule, value.compareTo(limit) <= 0, value, limit, limit.baseValue() - value.baseValue(), named);
    }

    /**
     * Returns the check of a rule that a figure is not below a limit.
     *
     * @param named values for the placeholders of the sentence beside {@code {value}} and {@code {limit}}
     */
    public static <Q extends Quantity & Comparable<Q>> Check atLeast(
            Rule rule, Q value, Q limit, Message.Value... named) {
        return compared(rule, value.compareTo(limit) >= 0, value, limit, value.baseValue() - limit.baseValue(), named);
    }

    /**
     * Returns the check of a rule that a share does not exceed a limit; its margin is the difference of the two.
     *
     * @param named values for the placeholders of the sentence beside {@code {value}} and {@code {limit}}
     */
    public static Check shareAtMost(Rule rule, Ratio value, Ratio limit, Message.Value... named) {
        boolean passed = value.compareTo(limit) <= 0;
        return new Check(
                rule,
                passed,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Ratio.of(limit.fraction() - value.fraction())),
                message(rule, passed, value, limit, named));
    }

    /**
     * Returns the check of a rule without figures.
     *
     * @param named values for the placeholders of the sentence
     */
    public static Check that(Rule rule, boolean passed, Message.Value... named) {
        return new Check(
                rule,
                passed,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Message.of(key(rule, passed), named));
    }

    /**
     * Returns the same check with the sentence of a special case: that of the template whose key ends with
     * {@code .{variant}}.
     */
    public Check variant(String variant) {
        return new Check(rule, passed, value, limit, margin, message.variant(variant));
    }

    private static Check compared(
            Rule rule, boolean passed, Quantity value, Quantity limit, double room, Message.Value... named) {
        return new Check(
                rule,
                passed,
                Optional.of(value),
                Optional.of(limit),
                share(room, limit),
                message(rule, passed, value, limit, named));
    }

    private static Message message(Rule rule, boolean passed, Object value, Object limit, Message.Value... named) {
        List<Message.Value> values = new ArrayList<>(named.length + 2);
        values.add(new Message.Value("value", value));
        values.add(new Message.Value("limit", limit));
        values.addAll(List.of(named));
        return new Message(key(rule, passed), values);
    }

    private static String key(Rule rule, boolean passed) {
        return "check." + rule.family() + "." + rule.code() + (passed ? ".passed" : ".failed");
    }

    /** A temperature has no share: its zero is a convention. */
    private static Optional<Ratio> share(double room, Quantity limit) {
        return limit.baseValue() > 0 && !(limit instanceof Temperature)
                ? Optional.of(Ratio.of(room / limit.baseValue()))
                : Optional.empty();
    }
}
