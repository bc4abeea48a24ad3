package org.daybank.core.design;

import java.util.Comparator;
import java.util.List;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Sentence;

/** Of products that do not fit, the one that comes nearest, and why it does not. */
final class NearestMiss {
    /** By the number of broken rules, then by how far the worst is broken. */
    static final Comparator<Rejection> NEAREST_FIRST =
            // a battery of unknown capacity is not held against every rule: it only seems near
            Comparator.comparing((Rejection rejection) -> breaks(rejection, "capacityInTheCold"))
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
                        Sentence.of("The nearest, %s: %s", rejection.product(), check.message())))
                .toList();
    }

    /** Products that break a rule, such as that of the voltage, are no near misses. */
    static List<Rejection> without(List<Rejection> rejected, String rule) {
        return rejected.stream().filter(rejection -> !breaks(rejection, rule)).toList();
    }

    /** The rules that the nearest of the rejected breaks; that there is none, where nothing was rejected. */
    static List<Check> of(String part, List<Rejection> rejected) {
        return rejected.stream()
                .min(NEAREST_FIRST)
                .map(NearestMiss::named)
                .filter(broken -> !broken.isEmpty())
                .orElseGet(() -> List.of(Check.that(part, false, "The catalogue has no %s for this.", part)));
    }

    private static boolean breaks(Rejection rejection, String rule) {
        return rejection.failedChecks().stream().anyMatch(check -> check.rule().equals(rule));
    }

    /** Signed room to the limit of the rule that is broken the furthest. */
    private static double worstMargin(Rejection rejection) {
        return rejection.failedChecks().stream()
                .mapToDouble(
                        check -> check.margin() == null ? 0 : check.margin().fraction())
                .min()
                .orElse(0);
    }
}
