package org.daybank.core.wiring;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Voltage;

/**
 * The switch that takes a circuit out of service, in all conductors that are not earthed.
 *
 * @param leastCurrent that it must carry and break
 * @param leastVoltage that it must break
 * @param directCurrent whether it must be rated for direct current
 */
public record Disconnect(Current leastCurrent, Voltage leastVoltage, boolean directCurrent) {}
