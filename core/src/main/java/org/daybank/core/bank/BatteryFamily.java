package org.daybank.core.bank;

/** The two families of batteries, whose habits differ in kind. */
public enum BatteryFamily {
    /** Vented, absorbed-glass-mat and gel cells of lead and sulphuric acid. */
    LEAD_ACID,
    /** Lithium iron phosphate cells behind a battery management system. */
    LITHIUM
}
