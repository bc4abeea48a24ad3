package org.daybank.core.sun;

import java.time.ZoneOffset;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.Place;

/**
 * The sun in the middle of every hour of a year, found once and read hour by hour. Unchangeable.
 *
 * <p>Between the midnights of a day the hour angle and the sine of the declination run straight: the error stays under
 * 0.001°, and no sine or cosine has to be found hour by hour.
 */
public final class SunPath {
    private static final int HOURS_OF_A_DAY = 24;
    private static final double MINUTES_OF_A_DAY = 1440;

    /** Toward the sun: up, north and east. */
    final double[] up;

    final double[] north;
    final double[] east;

    /** What the sun sends in W/m² on a plane that faces it, outside the air; one for each day. */
    final double[] normalExtraterrestrial;

    private SunPath(int hours) {
        up = new double[hours];
        north = new double[hours];
        east = new double[hours];
        normalExtraterrestrial = new double[hours / HOURS_OF_A_DAY];
    }

    /** Follows the sun through a year. */
    public static SunPath of(Place place, HourCalendar calendar, SunPolicy policy) {
        SunPath path = new SunPath(calendar.hours());
        double solarConstant = policy.solarConstant().wattsPerSquareMetre();
        double before = Double.NaN;
        Ephemeris end = Ephemeris.at(0);
        for (int day = 0; day < calendar.days(); day++) {
            double midnight = calendar.date(day).atStartOfDay(ZoneOffset.UTC).toEpochSecond() / 86400.0
                    - place.utcOffset().minutes() / MINUTES_OF_A_DAY;
            Ephemeris begin = midnight == before ? end : Ephemeris.at(midnight);
            before = midnight + 1;
            end = Ephemeris.at(before);
            path.normalExtraterrestrial[day] = solarConstant / (begin.distance() * begin.distance());
            path.followDay(day, place, begin, end);
        }
        return path;
    }

    private void followDay(int day, Place place, Ephemeris begin, Ephemeris end) {
        double sinPhi = Math.sin(place.latitude().radians());
        double cosPhi = Math.cos(place.latitude().radians());
        double turned =
                2 * Math.PI + Math.IEEEremainder(end.greenwichHourAngle() - begin.greenwichHourAngle(), 2 * Math.PI);
        double step = turned / HOURS_OF_A_DAY;
        double firstAngle = begin.greenwichHourAngle() + place.longitude().radians() + step / 2;
        double cosHour = Math.cos(firstAngle);
        double sinHour = Math.sin(firstAngle);
        double cosStep = Math.cos(step);
        double sinStep = Math.sin(step);
        double sinDelta = Math.sin(begin.declination());
        double declinationStep = (Math.sin(end.declination()) - sinDelta) / HOURS_OF_A_DAY;
        sinDelta += declinationStep / 2;
        int first = day * HOURS_OF_A_DAY;
        for (int hour = first; hour < first + HOURS_OF_A_DAY; hour++) {
            double cosDelta = Math.sqrt(1 - sinDelta * sinDelta);
            up[hour] = sinPhi * sinDelta + cosPhi * cosDelta * cosHour;
            north[hour] = cosPhi * sinDelta - sinPhi * cosDelta * cosHour;
            east[hour] = -cosDelta * sinHour;
            double turnedCosine = cosHour * cosStep - sinHour * sinStep;
            sinHour = sinHour * cosStep + cosHour * sinStep;
            cosHour = turnedCosine;
            sinDelta += declinationStep;
        }
    }

    /** How many hours. */
    public int hours() {
        return up.length;
    }

    /** Angle between the sun's centre and straight up in the middle of an hour, as if there were no air. */
    public Angle zenith(int hour) {
        return Angle.radians(Math.atan2(Math.hypot(north[hour], east[hour]), up[hour]));
    }

    /** Where the sun stands in the middle of an hour, clockwise from north, from 0° to below 360°. */
    public Angle azimuth(int hour) {
        return Angle.degrees((Math.toDegrees(Math.atan2(east[hour], north[hour])) + 360) % 360);
    }

    /** What the sun sends on a plane that faces it, outside the air. */
    public Irradiance normalExtraterrestrial(int hour) {
        return Irradiance.wattsPerSquareMetre(normalExtraterrestrial[hour / HOURS_OF_A_DAY]);
    }

    /** What the sun sends on the horizontal outside the air, in the middle of every hour. */
    public HourlySeries extraterrestrial() {
        double[] watts = new double[up.length];
        for (int hour = 0; hour < watts.length; hour++) {
            watts[hour] = normalExtraterrestrial[hour / HOURS_OF_A_DAY] * Math.max(0, up[hour]);
        }
        return HourlySeries.wattsPerSquareMetre(watts);
    }
}
