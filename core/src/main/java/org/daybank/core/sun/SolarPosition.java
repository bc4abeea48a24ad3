package org.daybank.core.sun;

import java.time.Instant;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.Place;

/**
 * Where the sun stands in the sky, to 0.01° from 1950 to 2050.
 *
 * @param zenith angle between the sun's centre and straight up, as if there were no air
 * @param azimuth clockwise from north, from 0° to below 360°
 * @param declination angle north of the equator
 * @param hourAngle angle since the sun's noon, from −180° to 180°
 * @param distanceFactor how much stronger the sun shines than at its mean distance: the inverse square of the distance
 */
public record SolarPosition(Angle zenith, Angle azimuth, Angle declination, Angle hourAngle, double distanceFactor) {
    private static final double SECONDS_OF_A_DAY = 86400;

    /** 8.794 seconds of arc: how much lower the sun on the horizon is seen from the surface than from the earth's centre. */
    private static final double PARALLAX = Math.toRadians(8.794 / 3600);

    /** Where the sun stands at an instant. */
    public static SolarPosition at(Place place, Instant instant) {
        Ephemeris sun = Ephemeris.at((instant.getEpochSecond() + instant.getNano() * 1e-9) / SECONDS_OF_A_DAY);
        double hourAngle =
                Math.IEEEremainder(sun.greenwichHourAngle() + place.longitude().radians(), 2 * Math.PI);
        double sinPhi = Math.sin(place.latitude().radians());
        double cosPhi = Math.cos(place.latitude().radians());
        double sinDelta = Math.sin(sun.declination());
        double cosDelta = Math.cos(sun.declination());
        double up = sinPhi * sinDelta + cosPhi * cosDelta * Math.cos(hourAngle);
        double north = cosPhi * sinDelta - sinPhi * cosDelta * Math.cos(hourAngle);
        double east = -cosDelta * Math.sin(hourAngle);
        double zenith = Math.atan2(Math.hypot(north, east), up);
        return new SolarPosition(
                Angle.radians(zenith + PARALLAX * Math.sin(zenith)),
                Angle.degrees((Math.toDegrees(Math.atan2(east, north)) + 360) % 360),
                Angle.radians(sun.declination()),
                Angle.radians(hourAngle),
                1 / (sun.distance() * sun.distance()));
    }

    /**
     * The zenith angle at which the sun is seen through the air, which lifts it by half a degree at the horizon: Saemundsson
     * 1986, in Meeus, eq. 16.4, with the pressure of the standard atmosphere. Below −1° nothing is seen and the geometric
     * angle returned.
     *
     * @param elevation above the sea
     * @param air temperature of the air
     */
    public Angle apparentZenith(Length elevation, Temperature air) {
        double height = 90 - zenith.degrees();
        if (height < -1) {
            return zenith;
        }
        double pressure = 1013.25 * Math.pow(1 - 2.25577e-5 * elevation.metres(), 5.25588);
        double arcMinutes = 1.02
                / Math.tan(Math.toRadians(height + 10.3 / (height + 5.11)))
                * pressure
                / 1010
                * 283
                / air.kelvins();
        return Angle.degrees(zenith.degrees() - arcMinutes / 60);
    }

    /** What the sun sends on a plane that faces it, outside the air. */
    public Irradiance extraterrestrial(SunPolicy policy) {
        return policy.solarConstant().times(distanceFactor);
    }

    /** Angle between the sun and the normal of a plane; over 90° it shines on the back. */
    public Angle incidence(Plane plane) {
        double up = zenith.cosine();
        double level = zenith.sine();
        double cosine = Facing.of(plane).dot(up, level * azimuth.cosine(), level * azimuth.sine());
        return Angle.radians(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }
}
