package org.daybank.core.inverter;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Validation;

/**
 * What an inverter gives for a short time, as a data sheet lists it.
 *
 * @param points at least one; kept from the shortest to the longest
 */
public record SurgeRating(List<Point> points) {

    /**
     * One line of the list.
     *
     * @param duration how long
     * @param power how much
     */
    public record Point(TimeSpan duration, ApparentPower power) {
        /** Refuses what is missing. */
        public Point {
            new Validation()
                    .required("duration", duration)
                    .required("power", power)
                    .done();
        }
    }

    /** Sorts the points. */
    public SurgeRating {
        new Validation().notEmpty("points", points).done();
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
