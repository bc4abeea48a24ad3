package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.Comparator;
import java.util.List;
import org.daybank.core.bank.BankRule;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Check;
import org.daybank.core.working.Message;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Rule;

/** Of products that do not fit, the one that comes nearest, and why it does not. */
final class NearestMiss {
    /** By the number of broken rules, then by how far the worst is broken. */
    static final Comparator<Rejection> NEAREST_FIRST =
            // a battery of unknown capacity is not held against every rule: it only seems near
            Comparator.comparing((Rejection rejection) -> breaks(rejection, BankRule.CAPACITY_IN_THE_COLD))
                    .thenComparing(rejection -> rejection.failedChecks().size())
                    .thenComparing(NearestMiss::worstMargin, Comparator.reverseOrder());

    private NearestMiss() {}

    /** The broken rules of a product, led by its name. */
    static List<Check> named(Rejection rejection) {
        return rejection.failedChecks().stream()
                .map(check -> new Check(
                        check.rule(),
                        false,
                        check.value(),
                        check.limit(),
                        check.margin(),
                        Message.of(
                                "check.nearest",
                                value("product", rejection.product()),
                                value("message", check.message()))))
                .toList();
    }

    /** Products that break a rule, such as that of the voltage, are no near misses. */
    static List<Rejection> without(List<Rejection> rejected, Rule rule) {
        return rejected.stream().filter(rejection -> !breaks(rejection, rule)).toList();
    }

    /** The rules that the nearest of the rejected breaks; that there is none, where nothing was rejected. */
    static List<Check> of(Rule part, List<Rejection> rejected) {
        return rejected.stream()
                .min(NEAREST_FIRST)
                .map(NearestMiss::named)
                .filter(broken -> !broken.isEmpty())
                .orElseGet(() -> List.of(Check.that(part, false)));
    }

    private static boolean breaks(Rejection rejection, Rule rule) {
        return rejection.failedChecks().stream().anyMatch(check -> check.rule() == rule);
    }

    /** Signed room to the limit of the rule that is broken the furthest. */
    private static double worstMargin(Rejection rejection) {
        return rejection.failedChecks().stream()
                .mapToDouble(check -> check.margin().map(Ratio::fraction).orElse(0.0))
                .min()
                .orElse(0);
    }
}
