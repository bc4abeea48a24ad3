package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.Duration;
import java.time.ZoneOffset;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.Place;
import org.daybank.core.site.UtcOffset;

class SunPathProperties {
    /** Parallax (0.0024°), which hours leave out, and straight lines between midnights (0.001°). */
    private static final double TOLERANCE_DEGREES = 0.004;

    @Property(tries = 60)
    void everyHourIsWhereTheInstantIs(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll @IntRange(min = -24, max = 28) int halfHours,
            @ForAll @IntRange(min = 1950, max = 2050) int year,
            @ForAll @IntRange(min = 0, max = 8759) int hour) {
        Place place = new Place(
                Latitude.degrees(latitude), Longitude.degrees(longitude), new UtcOffset(halfHours * 30), null);
        HourCalendar calendar = new HourCalendar(year, 8760);
        SunPath path = SunPath.of(place, calendar, SunPolicy.standard());
        SolarPosition sun = SolarPosition.at(
                place,
                calendar.date(hour / 24)
                        .atStartOfDay()
                        .atOffset(ZoneOffset.ofTotalSeconds(halfHours * 1800))
                        .toInstant()
                        .plus(Duration.ofMinutes(hour % 24 * 60L + 30)));
        double level = sun.zenith().sine();
        double off = Math.sqrt(square(path.up[hour] - sun.zenith().cosine())
                + square(path.north[hour] - level * sun.azimuth().cosine())
                + square(path.east[hour] - level * sun.azimuth().sine()));

        assertThat(Math.toDegrees(off)).isLessThan(TOLERANCE_DEGREES);
        assertThat(path.zenith(hour).degrees()).isCloseTo(sun.zenith().degrees(), within(TOLERANCE_DEGREES));
        assertThat((path.azimuth(hour).minus(sun.azimuth()).degrees() + 540) % 360 - 180)
                .isCloseTo(0, within(TOLERANCE_DEGREES / Math.max(1e-9, level)));
        // the distance is that of midnight: a day changes it by less than 0.03 %
        assertThat(path.normalExtraterrestrial(hour).wattsPerSquareMetre())
                .isCloseTo(sun.extraterrestrial(SunPolicy.standard()).wattsPerSquareMetre(), withinPercentage(0.07));
        assertThat(path.extraterrestrial().at(hour))
                .isCloseTo(
                        path.normalExtraterrestrial(hour).wattsPerSquareMetre() * Math.max(0, path.up[hour]),
                        within(1e-9));
    }

    private static double square(double x) {
        return x * x;
    }
}
