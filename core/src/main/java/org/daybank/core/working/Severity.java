package org.daybank.core.working;

/** How much a hazard weighs. */
public enum Severity {
    /** Worth knowing before buying. */
    NOTICE,
    /** Can damage equipment or leave the customer without power. */
    WARNING,
    /** Can injure or kill. */
    DANGER
}
