package org.daybank.core.opinion;

import java.util.ArrayList;
import java.util.List;

/** What an inspector writes down while looking over a design: every rule that is broken, and by how much. */
final class Faults {
    /** Sums taken in another order. */
    private static final double ROUNDING = 1e-9;

    private final List<String> found = new ArrayList<>();

    void atMost(String rule, double actual, double limit) {
        that("%s: %s over %s".formatted(rule, actual, limit), actual <= limit + ROUNDING * Math.abs(limit));
    }

    void atLeast(String rule, double actual, double limit) {
        that("%s: %s under %s".formatted(rule, actual, limit), actual >= limit - ROUNDING * Math.abs(limit));
    }

    void equal(String rule, double actual, double expected) {
        that(
                "%s: %s, not %s".formatted(rule, actual, expected),
                Math.abs(actual - expected) <= ROUNDING * Math.abs(expected));
    }

    void that(String rule, boolean kept) {
        if (!kept) {
            found.add(rule);
        }
    }

    List<String> found() {
        return List.copyOf(found);
    }
}
