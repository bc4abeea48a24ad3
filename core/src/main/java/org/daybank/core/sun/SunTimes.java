package org.daybank.core.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.Place;

/**
 * Sunrise, noon and sunset of a day, when the upper edge of the sun is seen on a level horizon: its centre 0.833° below, for
 * its radius and the bending of light in ordinary air. To some seconds at ordinary latitudes; the weather moves real
 * sunrises by a minute and more.
 *
 * @param place where
 * @param date by the clock of the place
 * @param sunrise absent when the sun does not rise, or does not set
 * @param noon when the sun is highest
 * @param sunset absent when the sun does not rise, or does not set
 * @param dayLength from sunrise to sunset: none in polar night, 24 h in polar day
 */
public record SunTimes(
        Place place,
        LocalDate date,
        Optional<Instant> sunrise,
        Instant noon,
        Optional<Instant> sunset,
        TimeSpan dayLength) {
    private static final double SEEN_HEIGHT = Math.sin(Math.toRadians(-0.833));
    private static final double SECONDS_OF_A_RADIAN = 43200 / Math.PI;
    private static final int ROUNDS = 5;

    /** The times of a day. */
    public static SunTimes on(LocalDate date, Place place) {
        double noonByClock = date.atTime(12, 0).toEpochSecond(ZoneOffset.UTC)
                - place.utcOffset().minutes() * 60.0;
        double noon = noonByClock;
        for (int round = 0; round < ROUNDS; round++) {
            noon -= hourAngle(noon, place) * SECONDS_OF_A_RADIAN;
        }
        double level = cosSunset(noon, place);
        if (Math.abs(level) > 1) {
            return new SunTimes(
                    place,
                    date,
                    Optional.empty(),
                    instant(noon),
                    Optional.empty(),
                    level > 1 ? TimeSpan.ZERO : TimeSpan.hours(24));
        }
        double sunrise = crossing(noon, place, -1);
        double sunset = crossing(noon, place, 1);
        return new SunTimes(
                place,
                date,
                Optional.of(instant(sunrise)),
                instant(noon),
                Optional.of(instant(sunset)),
                TimeSpan.seconds(sunset - sunrise));
    }

    /** When the sun passes the seen horizon before (−1) or after (1) noon. */
    private static double crossing(double noon, Place place, int side) {
        double time = noon;
        for (int round = 0; round < ROUNDS; round++) {
            double sunset = Math.acos(Math.max(-1, Math.min(1, cosSunset(time, place))));
            time += Math.IEEEremainder(side * sunset - hourAngle(time, place), 2 * Math.PI) * SECONDS_OF_A_RADIAN;
        }
        return time;
    }

    private static double cosSunset(double seconds, Place place) {
        double declination = Ephemeris.at(seconds / 86400).declination();
        double latitude = place.latitude().radians();
        return (SEEN_HEIGHT - Math.sin(latitude) * Math.sin(declination))
                / (Math.cos(latitude) * Math.cos(declination));
    }

    private static double hourAngle(double seconds, Place place) {
        return Math.IEEEremainder(
                Ephemeris.at(seconds / 86400).greenwichHourAngle()
                        + place.longitude().radians(),
                2 * Math.PI);
    }

    private static Instant instant(double seconds) {
        return Instant.ofEpochMilli(Math.round(seconds * 1000));
    }
}
