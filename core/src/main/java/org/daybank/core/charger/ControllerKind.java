package org.daybank.core.charger;

import org.daybank.core.array.ChargePath;

/** The families of charge controllers. */
public enum ControllerKind {
    /** Shorts the array when the bank is full; the array runs at the bank's voltage. */
    SHUNT(ChargePath.DIRECT),
    /** Switches the array on and off; the array runs at the bank's voltage. */
    PWM(ChargePath.DIRECT),
    /** Tracks the array's best point above the bank's voltage. */
    STEP_DOWN_MPPT(ChargePath.TRACKING),
    /** Tracks the array's best point below the bank's voltage. */
    STEP_UP_MPPT(ChargePath.TRACKING);

    private final ChargePath path;

    ControllerKind(ChargePath path) {
        this.path = path;
    }

    /** How the array's energy reaches the bank. */
    public ChargePath path() {
        return path;
    }
}
