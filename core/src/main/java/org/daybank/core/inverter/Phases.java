package org.daybank.core.inverter;

/** How an AC service is divided. */
public enum Phases {
    /** One line and a neutral. */
    SINGLE,
    /** Two lines in opposition about a neutral. */
    SPLIT,
    /** Three lines a third of a turn apart. */
    THREE
}
