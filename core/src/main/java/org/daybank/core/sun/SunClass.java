package org.daybank.core.sun;

import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;

/**
 * Moments of a month in which the sun shines alike on a plane.
 *
 * @param irradiance their mean
 * @param perDay how long they last on the mean day of the month
 * @param air mean temperature of the air meanwhile
 */
public record SunClass(Irradiance irradiance, TimeSpan perDay, Temperature air) {}
