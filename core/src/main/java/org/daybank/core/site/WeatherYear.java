package org.daybank.core.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.time.Year;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The weather of a year by the hour. Irradiances are means over the hour: {@code direct} on a surface that faces the sun, the
 * other two on the horizontal. Two of the three, or {@code global} alone, are enough to turn sunshine onto a plane.
 *
 * @param place where and by which clock
 * @param year of the calendar that the hours follow, from 1950 to 2050; the sun's position is taken from it
 * @param global irradiance of the horizontal, in W/m²
 * @param direct irradiance straight from the sun, in W/m²
 * @param diffuse irradiance of the horizontal from the sky, in W/m²
 * @param air temperature, in °C
 * @param wind speed, in m/s
 */
@RecordBuilder
public record WeatherYear(
        Place place,
        @Bounds(minimum = "1950", maximum = "2050") int year,
        @Nullable HourlySeries global,
        @Nullable HourlySeries direct,
        @Nullable HourlySeries diffuse,
        @Nullable HourlySeries air,
        @Nullable HourlySeries wind)
        implements WeatherYearBuilder.With {
    private static final int MOST_PROBLEMS = 50;

    /**
     * Validates every hour.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, of another length or cannot be true; the
     *     first fifty hours are named
     */
    public WeatherYear {
        Validation checks = Validation.of(WeatherYear.class, place, year, global, direct, diffuse, air, wind)
                .that(
                        global != null || (direct != null && diffuse != null),
                        "global",
                        ProblemCode.MISSING,
                        "global is required, or direct and diffuse in its place.");
        @Nullable HourlySeries[] given = {global, direct, diffuse, air, wind};
        int hours = 0;
        for (int i = 0; i < given.length; i++) {
            HourlySeries series = given[i];
            if (series != null) {
                hours = hours == 0 ? series.size() : hours;
                check(WeatherColumn.ALL.get(i), series, hours, checks);
            }
        }
        checks.that(
                        hours == 0 || hours == HourCalendar.COMMON || hours == HourCalendar.LEAP,
                        "",
                        ProblemCode.OUT_OF_RANGE,
                        "a year has 8760 or 8784 hours but here are " + hours + ".")
                .that(
                        hours != HourCalendar.LEAP || Year.isLeap(year),
                        "year",
                        ProblemCode.INCONSISTENT,
                        "%s is no leap year but has 8784 hours.".formatted(year))
                .done();
    }

    private static void check(WeatherColumn column, HourlySeries series, int hours, Validation checks) {
        checks.that(
                series.unit().equals(column.unit),
                column.label,
                ProblemCode.INCONSISTENT,
                "%s must be in %s, but was in %s."
                        .formatted(
                                column.label,
                                column.unit.symbol(),
                                series.unit().symbol()));
        checks.that(
                series.size() == hours,
                column.label,
                ProblemCode.INCONSISTENT,
                "%s has %s hours where others have %s.".formatted(column.label, series.size(), hours));
        int told = 0;
        for (int hour = 0; hour < series.size() && told < MOST_PROBLEMS; hour++) {
            Optional<String> complaint = column.complaint(series.at(hour), hour / 24 + 1);
            if (complaint.isPresent()) {
                checks.that(
                        false,
                        column.label + "/" + hour,
                        ProblemCode.OUT_OF_RANGE,
                        "hour %s: %s".formatted(hour, complaint.get()));
                told++;
            }
        }
    }

    /** How many hours the year has: 8760 or 8784. */
    public int hours() {
        return (global != null ? global : Objects.requireNonNull(direct)).size();
    }

    /** Which day each hour falls on. */
    public HourCalendar calendar() {
        return new HourCalendar(year, hours());
    }

    /**
     * The twelve means of this year: irradiation and air temperature.
     *
     * @throws org.daybank.core.schema.InvalidInput when {@code global} or {@code air} is absent
     */
    public MonthlyClimate months() {
        new Validation().required("global", global).required("air", air).done();
        HourCalendar calendar = calendar();
        HourlySeries irradiance = Objects.requireNonNull(global);
        HourlySeries temperature = Objects.requireNonNull(air);
        return MonthlyClimateBuilder.builder()
                .dailyIrradiation(Arrays.stream(Month.values())
                        .map(month -> Irradiation.wattHoursPerSquareMetre(
                                24 * irradiance.mean(calendar.firstHour(month), calendar.endHour(month))))
                        .toList())
                .meanAir(Arrays.stream(Month.values())
                        .map(month -> Temperature.celsius(
                                temperature.mean(calendar.firstHour(month), calendar.endHour(month))))
                        .toList())
                .build();
    }

    /**
     * The site that this year shows: its monthly means, with the coldest and the hottest hour as record temperatures. A
     * single year, and a typical one more so, seldom holds the records of decades: expect some kelvins beyond.
     *
     * @throws org.daybank.core.schema.InvalidInput when {@code global} or {@code air} is absent
     */
    public Site site() {
        MonthlyClimate months = months();
        HourlySeries temperature = Objects.requireNonNull(air);
        return SiteBuilder.builder()
                .latitude(place.latitude())
                .elevation(place.elevation())
                .recordLow(Temperature.celsius(temperature.least()))
                .recordHigh(Temperature.celsius(temperature.most()))
                .months(months)
                .build();
    }
}
