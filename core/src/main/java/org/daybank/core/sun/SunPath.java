package org.daybank.core.sun;

import java.time.ZoneOffset;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.Place;

/**
 * The sun in the middle of every hour of a year, as a direction in plain numbers.
 *
 * <p>Between the midnights of a day the hour angle and the sine of the declination run straight: the error stays under
 * 0.001°, and no sine or cosine has to be found hour by hour.
 */
final class SunPath {
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

    static SunPath of(Place place, HourCalendar calendar, SunPolicy policy) {
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
}
