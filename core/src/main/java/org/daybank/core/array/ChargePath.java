package org.daybank.core.array;

/** How the array's energy reaches the bank. */
public enum ChargePath {
    /** At the bank's own voltage: shunt and PWM controllers pass the array's current through. */
    DIRECT,
    /** From the array's best point: MPPT controllers convert its power to the bank's voltage. */
    TRACKING
}
