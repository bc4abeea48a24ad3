package org.daybank.core.design;

/** What a system hangs on. */
public enum SystemKind {
    /** Sun and bank alone. */
    STAND_ALONE,
    /** Sun and bank on wheels or a keel, with shore power and an alternator now and then. */
    MOBILE,
    /** The grid, into which an array feeds without a bank. */
    GRID_INTERACTIVE,
    /** The grid, with a bank that carries the essential loads while it is away. */
    GRID_BACKUP
}
