package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/** Reads margins and broken rules off checks. */
final class Margins {
    /** A margin worked to five digits by hand, and half a unit of the last. */
    static void assertMargin(List<Check> checks, String rule, double margin) {
        Check check = checks.stream()
                .filter(limit -> limit.rule().code().equals(rule))
                .findFirst()
                .orElseThrow();
        assertThat(check.margin().orElseThrow().fraction()).as(rule).isCloseTo(margin, within(6e-6));
    }

    /** The rules that each rejected product breaks. */
    static Map<String, List<String>> rules(List<Rejection> rejected) {
        return rejected.stream()
                .collect(Collectors.toMap(
                        Rejection::product,
                        rejection -> rejection.failedChecks().stream()
                                .map(check -> check.rule().code())
                                .toList()));
    }

    private Margins() {}
}
