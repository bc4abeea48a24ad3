package org.daybank.core.sun;

import java.time.Month;
import java.util.List;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.Place;
import org.daybank.core.site.Site;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.site.WeatherYear;

/**
 * Weather years made up from the twelve means of a site, as many as wanted: dull weeks and clear ones come as they do in
 * nature, while each month keeps its mean irradiation and temperature exactly. For the chance of a shortage, which monthly
 * means alone cannot tell.
 */
public final class SyntheticWeather {
    private static final int COMMON_YEAR = 2001;

    /** What may come without a sun in the mean of a month: the twilight at the edge of polar night. */
    private static final Irradiation MOST_TWILIGHT = Irradiation.kilowattHoursPerSquareMetre(0.25);

    private SyntheticWeather() {}

    /**
     * One year of a series; the same seed and number give the same year. Its clock shows mean solar time (longitude 0°, UTC),
     * for a site does not say its longitude.
     *
     * @param seed of the whole series
     * @param number of the year in the series, from 0
     * @throws org.daybank.core.schema.InvalidInput when a month gets more than the sun sends at this latitude, or more than
     *     the clearest days bring
     */
    public static WeatherYear year(Site site, long seed, int number, SunPolicy sunPolicy, SyntheticPolicy policy) {
        new Validation().atLeast("number", number, 0).done();
        Place place = new Place(site.latitude(), Longitude.degrees(0), UtcOffset.hours(0), site.elevation());
        HourCalendar calendar = new HourCalendar(COMMON_YEAR, HourCalendar.COMMON);
        Dice dice = new Dice(seed, number);
        SyntheticSky sky = new SyntheticSky(SunPath.of(place, calendar, sunPolicy), dice);
        fill(sky, PlaneOfArray.meanDays(site, sunPolicy), calendar);
        double[] air = new SyntheticAir(site, calendar, policy).celsius(sky.clearness, dice);
        return new WeatherYear(
                place,
                COMMON_YEAR,
                HourlySeries.wattsPerSquareMetre(sky.global),
                null,
                null,
                HourlySeries.celsius(air),
                null);
    }

    private static void fill(SyntheticSky sky, List<MeanDay> days, HourCalendar calendar) {
        Validation checks = new Validation();
        for (MeanDay day : days) {
            Month month = day.month;
            double lacking = sky.fill(month, calendar, day.globalWattHours);
            if (lacking > MOST_TWILIGHT.wattHoursPerSquareMetre()) {
                checks.that(
                        false,
                        "months/dailyIrradiation/" + (month.getValue() - 1),
                        ProblemCode.INCONSISTENT,
                        "irradiation of %s is %s, %s more than the clearest days bring"
                                .formatted(
                                        month,
                                        Irradiation.wattHoursPerSquareMetre(day.globalWattHours)
                                                .rounded(),
                                        Irradiation.wattHoursPerSquareMetre(lacking)
                                                .rounded()));
            } else if (lacking > 0) {
                sky.addTwilight(month, calendar, lacking);
            }
        }
        checks.done();
    }
}
