package org.daybank.core.inverter;

/** How an AC service is divided. */
public enum Phases {
    /** One line and a neutral. */
    SINGLE(1),
    /** Two lines in opposition about a neutral. */
    SPLIT(2),
    /** Three lines a third of a turn apart. */
    THREE(3);

    private final int lines;

    Phases(int lines) {
        this.lines = lines;
    }

    /** How many lines carry the loads. */
    public int lines() {
        return lines;
    }
}
