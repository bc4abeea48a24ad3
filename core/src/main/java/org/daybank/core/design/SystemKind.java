package org.daybank.core.design;

/** What a system hangs on. */
public enum SystemKind {
    /** Sun and bank alone. */
    STAND_ALONE
}
