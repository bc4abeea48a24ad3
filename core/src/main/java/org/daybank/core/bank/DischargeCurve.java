package org.daybank.core.bank;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * Rated capacity by discharge time, as a data sheet lists it.
 *
 * @param points at least one; kept from the fastest to the slowest discharge
 */
public record DischargeCurve(
        @Bounds(minimumItems = 1, maximumItems = 100) List<Point> points) {

    /**
     * One line of the list.
     *
     * @param over time over which the capacity is drawn
     * @param capacity drawn in that time
     */
    public record Point(
            @Bounds(minimum = "1 min", maximum = "1000 h") TimeSpan over,

            @Bounds(exclusiveMinimum = "0 Ah", maximum = "10000 Ah")
            Charge capacity) {
        /** Validates the components. */
        public Point {
            Validation.of(Point.class, over, capacity).done();
        }

        private double amperes() {
            return capacity.dividedBy(over).amperes();
        }
    }

    /**
     * Sorts the points.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is none, or a slower discharge yields less or is no slower
     */
    public DischargeCurve {
        Validation.of(DischargeCurve.class, points).done();
        points = points.stream().sorted(Comparator.comparing(Point::over)).toList();
        Validation order = new Validation();
        for (int i = 1; i < points.size(); i++) {
            Point faster = points.get(i - 1);
            Point slower = points.get(i);
            order.that(
                            slower.capacity().compareTo(faster.capacity()) >= 0,
                            "points",
                            ProblemCode.INCONSISTENT,
                            "capacity over %s must be at least %s, that over %s, but was %s."
                                    .formatted(slower.over(), faster.capacity(), faster.over(), slower.capacity()))
                    .that(
                            slower.amperes() < faster.amperes(),
                            "points",
                            ProblemCode.INCONSISTENT,
                            "%s over %s must take a smaller current than %s over %s."
                                    .formatted(slower.capacity(), slower.over(), faster.capacity(), faster.over()));
        }
        order.done();
    }

    /** Reads points written as {@code "5 h: 180 Ah; 20 h: 220 Ah"}. */
    public static DischargeCurve parse(CharSequence text) {
        return new DischargeCurve(Arrays.stream(text.toString().split(";", -1))
                .map(point -> point.split(":", 2))
                .map(pair -> new Point(TimeSpan.parse(pair[0]), Charge.parse(pair.length < 2 ? "" : pair[1])))
                .toList());
    }

    /** Capacity at the slowest published discharge, the most that is ever credited. */
    public Charge slowest() {
        return points.get(points.size() - 1).capacity();
    }

    /**
     * Capacity at a discharge current: log-log between the published points, by Peukert's law beyond the fastest, never
     * more than at the slowest.
     */
    public Charge at(Current current, Ratio peukertExponent) {
        double amperes = current.amperes();
        Point slowest = points.get(points.size() - 1);
        if (amperes <= slowest.amperes()) {
            return slowest.capacity();
        }
        Point fastest = points.get(0);
        if (amperes >= fastest.amperes()) {
            return fastest.capacity().times(Math.pow(fastest.amperes() / amperes, peukertExponent.fraction() - 1));
        }
        int i = 0;
        while (points.get(i + 1).amperes() > amperes) {
            i++;
        }
        Point faster = points.get(i);
        Point slower = points.get(i + 1);
        double along = Math.log(faster.amperes() / amperes) / Math.log(faster.amperes() / slower.amperes());
        return faster.capacity().times(Math.pow(slower.capacity().dividedBy(faster.capacity()), along));
    }

    @Override
    public String toString() {
        return String.join(
                "; ",
                points.stream()
                        .map(point -> point.over() + ": " + point.capacity())
                        .toList());
    }
}
