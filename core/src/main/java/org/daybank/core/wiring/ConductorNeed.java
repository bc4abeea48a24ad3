package org.daybank.core.wiring;

import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;

/**
 * What each rule asks of a conductor.
 *
 * @param terminals ampacity in the column of the terminals, without corrections
 * @param conditions ampacity after the corrections for ambient and grouping
 * @param device ampacity, after both, that the overcurrent device protects; absent without a device
 * @param dropLimit largest drop, of the operating voltage
 */
public record ConductorNeed(Current terminals, Current conditions, Optional<Current> device, Ratio dropLimit) {}
