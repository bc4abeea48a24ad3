package org.daybank.core.design.search;

import static org.daybank.core.working.Message.value;

import java.util.Comparator;
import java.util.List;
import org.daybank.core.bank.BankRule;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Check;
import org.daybank.core.working.Message;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Rule;

/** Of products that do not fit, the one that comes nearest, and the rules it fails. */
final class NearestRejection {
    /** By the number of failed rules, then by the worst margin. */
    static final Comparator<Rejection> NEAREST_FIRST =
            // a battery of unknown capacity is not evaluated against every rule: it only seems near
            Comparator.comparing((Rejection rejection) -> fails(rejection, BankRule.CAPACITY_IN_THE_COLD))
                    .thenComparing(rejection -> rejection.failedChecks().size())
                    .thenComparing(NearestRejection::worstMargin, Comparator.reverseOrder());

    private NearestRejection() {}

    /** Returns the failed rules of a product, its model in front of each message. */
    static List<Check> failedChecks(Rejection rejection) {
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

    /** Returns the rejected products that pass one rule, such as that of the voltage. */
    static List<Rejection> without(List<Rejection> rejected, Rule rule) {
        return rejected.stream().filter(rejection -> !fails(rejection, rule)).toList();
    }

    /**
     * Returns the rules that the nearest of the rejected products fails.
     *
     * @param none the failed check where nothing was rejected
     */
    static List<Check> failedChecks(List<Rejection> rejected, Check none) {
        return rejected.stream()
                .min(NEAREST_FIRST)
                .map(NearestRejection::failedChecks)
                .filter(failed -> !failed.isEmpty())
                .orElseGet(() -> List.of(none));
    }

    private static boolean fails(Rejection rejection, Rule rule) {
        return rejection.failedChecks().stream().anyMatch(check -> check.rule() == rule);
    }

    /** The lowest margin of the failed rules. */
    private static double worstMargin(Rejection rejection) {
        return rejection.failedChecks().stream()
                .mapToDouble(check -> check.margin().map(Ratio::fraction).orElse(0.0))
                .min()
                .orElse(0);
    }
}
