package org.daybank.core.sun;

import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Validation;

/**
 * The sun of one day at one latitude, outside the air, by the formulas customary for daily and monthly sums; their
 * declination is right to about half a degree.
 *
 * @param latitude where
 * @param dayOfYear when: 1 is 1 January
 * @param declination of the sun from the equator
 * @param sunsetHourAngle angle that the sun turns from noon to sunset: 0° in polar night, 180° in polar day
 * @param dayLength time between sunrise and sunset of the sun's centre, without refraction
 * @param extraterrestrial irradiation of a horizontal square metre outside the air
 */
public record SolarDay(
        Latitude latitude,
        int dayOfYear,
        Angle declination,
        Angle sunsetHourAngle,
        TimeSpan dayLength,
        Irradiation extraterrestrial) {
    private static final double DEGREES_EACH_HOUR = 15;

    /**
     * Finds the sun of a day.
     *
     * <p>Declination: Cooper 1969, {@code δ = 23.45° · sin(360° · (284 + n) / 365)}. Sunset: {@code cos ω_s = −tan φ ·
     * tan δ}. Distance and extraterrestrial irradiation: Duffie and Beckman, eq. 1.4.1a and 1.10.3.
     *
     * @param dayOfYear from 1 to 366
     * @throws org.daybank.core.schema.InvalidInput when the day is out of range
     */
    public static SolarDay on(Latitude latitude, int dayOfYear, SunPolicy policy) {
        new Validation().within("dayOfYear", dayOfYear, 1, 366).done();
        double phi = latitude.radians();
        double delta = Math.toRadians(23.45) * Math.sin(2 * Math.PI * (284 + dayOfYear) / 365);
        double sunset = Math.acos(Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(delta))));
        double distanceFactor = 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
        double wattHours = 24
                / Math.PI
                * policy.solarConstant().wattsPerSquareMetre()
                * distanceFactor
                * (Math.cos(phi) * Math.cos(delta) * Math.sin(sunset) + sunset * Math.sin(phi) * Math.sin(delta));
        return new SolarDay(
                latitude,
                dayOfYear,
                Angle.radians(delta),
                Angle.radians(sunset),
                TimeSpan.hours(2 * Math.toDegrees(sunset) / DEGREES_EACH_HOUR),
                Irradiation.wattHoursPerSquareMetre(Math.max(0, wattHours)));
    }
}
