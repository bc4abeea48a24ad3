package org.daybank.core.load;

/** Which starts may fall on the same moment. */
public enum CoincidentStarts {
    /** Every load starts at once. */
    ALL,
    /** All loads that switch themselves start together, and with them the hardest start by hand. */
    SELF_SWITCHING,
    /** Only the hardest start counts. */
    LARGEST
}
