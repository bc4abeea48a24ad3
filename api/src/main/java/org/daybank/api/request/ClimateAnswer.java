package org.daybank.api.request;

import org.daybank.core.site.Place;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.jspecify.annotations.Nullable;

/**
 * What a weather year shows of a site.
 *
 * @param site ready to stand in a brief: its months, its coldest and hottest hour
 * @param place where and by which clock the hours were taken
 * @param year of the calendar that the hours follow
 * @param hours how many
 * @param weather the hours, ready to stand in a brief; absent unless asked for
 */
public record ClimateAnswer(
        Site site,
        Place place,
        int year,
        int hours,
        @Nullable WeatherYear weather) {
    /** What a weather year shows. */
    public static ClimateAnswer of(WeatherYear weather, boolean withWeather) {
        return new ClimateAnswer(
                weather.site(), weather.place(), weather.year(), weather.hours(), withWeather ? weather : null);
    }
}
