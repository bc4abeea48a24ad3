package org.daybank.core.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.Angle;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.daybank.core.schema.Validation;

/**
 * How high ridges, trees and houses stand around, seen from the array; straight lines between the points, all the way round.
 *
 * @param points by azimuth clockwise from north; none for an open horizon
 */
public record Horizon(@Bounds(maximumItems = 720) List<Point> points) {
    /** Nothing stands in the way. */
    public static final Horizon OPEN = new Horizon(List.of());

    /**
     * One point of the skyline.
     *
     * @param azimuth clockwise from north, from 0° to 360°
     * @param elevation above the level, from 0° to 90°
     */
    public record Point(
            @Bounds(minimum = "0 deg", maximum = "360 deg") Angle azimuth,

            @Bounds(minimum = "0 deg", maximum = "90 deg") Angle elevation) {
        /**
         * Validates both angles.
         *
         * @throws InvalidInput when one is missing or out of range
         */
        public Point {
            Validation.of(Point.class, azimuth, elevation).done();
        }
    }

    /**
     * Keeps the points in order of their azimuth.
     *
     * @throws InvalidInput when one is missing, there are more than 720, or an azimuth is given twice
     */
    public Horizon {
        Validation.of(Horizon.class, points).done();
        List<Point> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparing(Point::azimuth));
        Validation checks = new Validation();
        for (int i = 1; i < sorted.size(); i++) {
            Angle azimuth = sorted.get(i).azimuth();
            checks.that(
                    azimuth.compareTo(sorted.get(i - 1).azimuth()) > 0,
                    "points",
                    ProblemCode.CONFLICT,
                    "the horizon has two elevations at azimuth " + azimuth);
        }
        checks.done();
        points = List.copyOf(sorted);
    }

    /**
     * Reads {@code "open"}, or points as azimuth and elevation: {@code "90 deg: 5 deg; 180 deg: 12 deg"}.
     *
     * @throws IllegalArgumentException when the text is neither, or an angle is out of range
     */
    public static Horizon parse(CharSequence text) {
        String trimmed = text.toString().strip();
        if (trimmed.equals("open")) {
            return OPEN;
        }
        List<Point> points = new ArrayList<>();
        Problems problems = new Problems();
        String[] parts = trimmed.split(";", -1);
        for (int i = 0; i < parts.length; i++) {
            String part = parts[i];
            String[] pair = part.split(":", -1);
            if (pair.length != 2) {
                throw new IllegalArgumentException(
                        "'%s' is not a point of a horizon: write azimuth and elevation, as in '90 deg: 5 deg; 180 deg: 12 deg', or 'open'"
                                .formatted(part.length() > 40 ? part.substring(0, 40) + "…" : part));
            }
            try {
                points.add(new Point(Angle.parse(pair[0]), Angle.parse(pair[1])));
            } catch (InvalidInput refused) {
                for (Problem problem : refused.problems()) {
                    String point = "points/" + i;
                    problems.add("/" + point + problem.path(), problem.code(), point + "/" + problem.message());
                }
            }
        }
        if (!problems.isEmpty()) {
            throw problems.asException();
        }
        return new Horizon(points);
    }

    /** Whether nothing stands in the way. */
    public boolean open() {
        return points.stream().allMatch(point -> point.elevation().equals(Angle.ZERO));
    }

    /** How high the skyline stands in a direction, from 0° to below 360° clockwise from north. */
    public Angle elevation(Angle azimuth) {
        if (points.isEmpty()) {
            return Angle.ZERO;
        }
        Point after = points.stream()
                .filter(point -> point.azimuth().compareTo(azimuth) >= 0)
                .findFirst()
                .orElse(points.get(0));
        Point before = points.get(points.size() - 1);
        for (Point point : points) {
            before = point.azimuth().compareTo(azimuth) < 0 ? point : before;
        }
        double gap = turn(after.azimuth().minus(before.azimuth()));
        double along = gap == 0 ? 0 : turn(azimuth.minus(before.azimuth())) / gap;
        return before.elevation()
                .plus(after.elevation().minus(before.elevation()).times(along));
    }

    private static double turn(Angle angle) {
        return (angle.degrees() % 360 + 360) % 360;
    }

    /** As {@link #parse} reads it. */
    @Override
    public String toString() {
        return points.isEmpty()
                ? "open"
                : String.join(
                        "; ",
                        points.stream()
                                .map(point -> point.azimuth() + ": " + point.elevation())
                                .toList());
    }
}
