package org.daybank.core.design.search;

import java.util.Comparator;
import java.util.List;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Sentence;

/** Of products that do not fit, the one that comes nearest, and the rules it fails. */
final class NearestRejection {
    /** By the number of failed rules, then by the worst margin. */
    static final Comparator<Rejection> NEAREST_FIRST =
            // a battery of unknown capacity is not evaluated against every rule: it only seems near
            Comparator.comparing((Rejection rejection) -> fails(rejection, "capacityInTheCold"))
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
                        Sentence.of("The nearest, %s: %s", rejection.product(), check.message())))
                .toList();
    }

    /** Returns the rejected products that pass one rule, such as that of the voltage. */
    static List<Rejection> without(List<Rejection> rejected, String rule) {
        return rejected.stream().filter(rejection -> !fails(rejection, rule)).toList();
    }

    /**
     * Returns the rules that the nearest of the rejected products fails.
     *
     * @param part name of the rule where nothing was rejected
     * @param none message where nothing was rejected
     */
    static List<Check> failedChecks(String part, List<Rejection> rejected, String none) {
        return rejected.stream()
                .min(NEAREST_FIRST)
                .map(NearestRejection::failedChecks)
                .filter(failed -> !failed.isEmpty())
                .orElseGet(() -> List.of(Check.that(part, false, none)));
    }

    private static boolean fails(Rejection rejection, String rule) {
        return rejection.failedChecks().stream().anyMatch(check -> check.rule().equals(rule));
    }

    /** The lowest margin of the failed rules. */
    private static double worstMargin(Rejection rejection) {
        return rejection.failedChecks().stream()
                .mapToDouble(
                        check -> check.margin() == null ? 0 : check.margin().fraction())
                .min()
                .orElse(0);
    }
}
