package org.daybank.core.inverter;

import org.daybank.core.quantity.Voltage;

/**
 * The voltages of an array input.
 *
 * @param maximum that it stands, the policy's reserve kept free
 * @param trackingLowest lower edge of the tracking window
 * @param trackingHighest upper edge
 */
record InputLimits(Voltage maximum, Voltage trackingLowest, Voltage trackingHighest) {
    static InputLimits of(GridInverter inverter, GridPolicy policy) {
        return new InputLimits(
                inverter.maximumInputVoltage().times(policy.openCircuitReserve().complement()),
                inverter.trackingLowest(),
                inverter.trackingHighest());
    }
}
