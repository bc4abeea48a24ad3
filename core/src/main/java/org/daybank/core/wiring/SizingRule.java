package org.daybank.core.wiring;

/** What decides the size of a conductor. */
public enum SizingRule {
    /** The uncorrected ampacity at its terminals. */
    TERMINALS,
    /** The ampacity corrected for ambient and grouping. */
    CONDITIONS,
    /** The overcurrent device that must protect it. */
    DEVICE,
    /** The drop limit. */
    DROP
}
