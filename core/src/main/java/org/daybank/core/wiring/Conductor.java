package org.daybank.core.wiring;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Resistance;

/**
 * One line of a conductor table, as a policy reads it.
 *
 * @param size its size
 * @param each100Metres resistance of a hundred metres at 20 °C
 * @param atTerminals ampacity in the column of the terminals, uncorrected
 * @param ofInsulation ampacity in the column of the insulation, uncorrected
 * @param mostDevice greatest rating of its overcurrent device, whatever its ampacity
 */
record Conductor(
        ConductorSize size, Resistance each100Metres, Current atTerminals, Current ofInsulation, Current mostDevice) {}
