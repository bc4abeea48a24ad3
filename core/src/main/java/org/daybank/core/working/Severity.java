package org.daybank.core.working;

/** The severity of a hazard, by the signal words of ANSI Z535.6. */
public enum Severity {
    /** Concerns property or performance only. */
    NOTICE,
    /** Can cause minor or moderate injury if not avoided. */
    CAUTION,
    /** Can cause death or serious injury if not avoided. */
    WARNING,
    /** Will cause death or serious injury if not avoided. */
    DANGER
}
