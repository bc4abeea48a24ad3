package org.daybank.core.load;

/** Where a load is connected. */
public enum Supply {
    /** Behind the inverter. */
    AC,
    /** On the bank's own voltage. */
    DC
}
