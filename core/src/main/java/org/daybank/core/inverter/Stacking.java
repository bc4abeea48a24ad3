package org.daybank.core.inverter;

/** How the units of one service are joined on their AC side. */
public enum Stacking {
    /** One unit gives the whole service. */
    ONE_UNIT,
    /** Several units feed the same lines together, for more current. */
    PARALLEL,
    /** One unit or several on each of two lines in opposition: the voltages add up to a split phase. */
    SERIES,
    /** One unit or several on each of three lines a third of a turn apart. */
    THREE_PHASE
}
