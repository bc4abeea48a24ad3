package org.daybank.core.simulation;

import org.daybank.core.quantity.Energy;

/**
 * Where the energy of a year came from and went to. It closes: what came in and what the bank held at the beginning is what
 * went out and what it holds at the end.
 *
 * @param array at its best point, dirt and age and snow reckoned in; where a controller does not track, what it brings to the
 *     bank without a limit
 * @param engine through its charger
 * @param shore through its charger, and what an alternator charged
 * @param served what the loads got
 * @param conversionLoss between bank and loads: inverter and DC wiring
 * @param ownDraw what controllers and heaters took
 * @param controllerLoss between array and bank
 * @param clipped over what the controllers give
 * @param spilled what nobody had use for
 * @param batteryLoss between what went into the bank and what came out
 * @param selfDischarge lost at rest
 * @param heldBefore what the bank held at the beginning
 * @param heldAfter what it holds at the end
 */
public record EnergyLedger(
        Energy array,
        Energy engine,
        Energy shore,
        Energy served,
        Energy conversionLoss,
        Energy ownDraw,
        Energy controllerLoss,
        Energy clipped,
        Energy spilled,
        Energy batteryLoss,
        Energy selfDischarge,
        Energy heldBefore,
        Energy heldAfter) {
    /** What came in less what went out, over what came in: zero but for rounding. */
    public double imbalance() {
        double in = array.plus(engine).plus(shore).plus(heldBefore).wattHours();
        double out = served.plus(conversionLoss)
                .plus(ownDraw)
                .plus(controllerLoss)
                .plus(clipped)
                .plus(spilled)
                .plus(batteryLoss)
                .plus(selfDischarge)
                .plus(heldAfter)
                .wattHours();
        return in == 0 ? out : (in - out) / in;
    }
}
