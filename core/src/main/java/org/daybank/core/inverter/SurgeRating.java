package org.daybank.core.inverter;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * What an inverter gives for a short time, as a data sheet lists it.
 *
 * @param points at least one; kept from the shortest to the longest
 */
public record SurgeRating(
        @Bounds(minimumItems = 1, maximumItems = 20) List<Point> points) {

    /**
     * One line of the list.
     *
     * @param duration how long
     * @param power how much
     */
    public record Point(
            @Bounds(exclusiveMinimum = "0 s", maximum = "24 h", sensible = "5 s to 30 min")
            TimeSpan duration,

            @Bounds(exclusiveMinimum = "0 VA", maximum = "10000 kVA")
            ApparentPower power) {
        /**
         * Validates the point.
         *
         * @throws org.daybank.core.schema.InvalidInput when a value is missing or outside its bounds
         */
        public Point {
            Validation.of(Point.class, duration, power).done();
        }
    }

    /**
     * Validates the points and sorts them by duration.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is none, or one is missing
     */
    public SurgeRating {
        Validation.of(SurgeRating.class, points).done();
        points = points.stream().sorted(Comparator.comparing(Point::duration)).toList();
    }

    /** Reads points written as {@code "5 s: 6000 VA; 60 s: 4500 VA"}. */
    public static SurgeRating parse(CharSequence text) {
        return new SurgeRating(Arrays.stream(text.toString().split(";", -1))
                .map(point -> point.split(":", 2))
                .map(pair -> new Point(TimeSpan.parse(pair[0]), ApparentPower.parse(pair.length < 2 ? "" : pair[1])))
                .toList());
    }

    /** What is given for a duration: the rating of the next longer one listed; nothing beyond the longest. */
    public ApparentPower over(TimeSpan duration) {
        return points.stream()
                .filter(point -> point.duration().compareTo(duration) >= 0)
                .map(Point::power)
                .findFirst()
                .orElse(ApparentPower.ZERO);
    }

    @Override
    public String toString() {
        return String.join(
                "; ",
                points.stream()
                        .map(point -> point.duration() + ": " + point.power())
                        .toList());
    }
}
