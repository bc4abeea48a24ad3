package org.daybank.core.working;

import java.util.List;

/**
 * A product that does not fit, with every rule it breaks.
 *
 * @param product its model
 * @param failedChecks the rules it breaks, at least one
 */
public record Rejection(String product, List<Check> failedChecks) {
    /** Keeps a copy. */
    public Rejection {
        failedChecks = List.copyOf(failedChecks);
    }

    /** The rejection of a product by those of its checks that are not passed. */
    public static Rejection of(String product, List<Check> checks) {
        return new Rejection(
                product, checks.stream().filter(check -> !check.passed()).toList());
    }
}
