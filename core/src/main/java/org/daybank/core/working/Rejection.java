package org.daybank.core.working;

import java.util.List;

/**
 * A product that does not fit, with every rule it breaks.
 *
 * @param product its model
 * @param broken the rules it breaks, at least one
 */
public record Rejection(String product, List<Finding> broken) {
    /** Keeps a copy. */
    public Rejection {
        broken = List.copyOf(broken);
    }

    /** The rejection of a product by those of its findings that are not met. */
    public static Rejection of(String product, List<Finding> findings) {
        return new Rejection(
                product, findings.stream().filter(finding -> !finding.met()).toList());
    }
}
