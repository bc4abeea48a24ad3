package org.daybank.core.sun;

import java.time.Month;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;

/**
 * The mean day of one month on a plane. The irradiations are sums for the day.
 *
 * @param month which
 * @param declination of the sun
 * @param sunsetHourAngle angle from noon to sunset
 * @param dayLength time between sunrise and sunset
 * @param extraterrestrial on the horizontal outside the air
 * @param clearness share of it that arrives; zero in polar night
 * @param diffuseFraction share of the arriving that comes from the sky and not from the sun; one in polar night
 * @param horizontal on the horizontal
 * @param beam straight from the sun on the plane
 * @param skyDiffuse from the sky on the plane
 * @param ground from the ground on the plane
 * @param planeOfArray sum of the three
 */
public record SunMonth(
        Month month,
        Angle declination,
        Angle sunsetHourAngle,
        TimeSpan dayLength,
        Irradiation extraterrestrial,
        Ratio clearness,
        Ratio diffuseFraction,
        Irradiation horizontal,
        Irradiation beam,
        Irradiation skyDiffuse,
        Irradiation ground,
        Irradiation planeOfArray) {
    /** What falls on the plane in the whole month, 28 days in February. */
    public Irradiation wholeMonth() {
        return planeOfArray.times(month.minLength());
    }
}
