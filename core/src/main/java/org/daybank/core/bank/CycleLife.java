package org.daybank.core.bank;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Scalars;
import org.daybank.core.schema.Validation;

/**
 * How many cycles of a depth a battery lasts until it is worn, from published points: a straight line between them when both
 * axes are logarithmic. Shallower than all of them, a cycle wears it in proportion to its depth; deeper, the last slope goes
 * on, and at least that.
 *
 * @param points shallowest first
 */
public record CycleLife(
        @Bounds(minimumItems = 1, maximumItems = 100) List<Point> points) {
    /** A slope of minus one: the energy that passes through over the whole life is the same at either depth. */
    private static final double SAME_THROUGHPUT = -1;

    /**
     * One published point.
     *
     * @param depth of the discharge, from 0.001 to 1
     * @param cycles until it is worn, at least one
     */
    public record Point(
            @Bounds(minimum = "0.001", maximum = "1") Ratio depth,
            @Bounds(minimum = "1", maximum = "100000000") int cycles) {
        /** Validates the components. */
        public Point {
            Validation.of(Point.class, depth, cycles).done();
        }
    }

    /**
     * Keeps a copy, shallowest first.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no point, one is out of range, two stand at one depth, or a
     *     deeper discharge lasts longer
     */
    public CycleLife {
        Validation.of(CycleLife.class, points).done();
        points = points.stream().sorted(Comparator.comparing(Point::depth)).toList();
        Validation order = new Validation();
        for (int i = 1; i < points.size(); i++) {
            Point shallow = points.get(i - 1);
            Point deep = points.get(i);
            order.that(
                    deep.depth().compareTo(shallow.depth()) > 0 && deep.cycles() <= shallow.cycles(),
                    "points",
                    ProblemCode.INCONSISTENT,
                    "%s cycles at a depth of %s do not follow %s at %s: each depth stands once and a deeper one lasts no longer."
                            .formatted(deep.cycles(), deep.depth(), shallow.cycles(), shallow.depth()));
        }
        order.done();
    }

    /** Reads points written as {@code "0.2: 3000; 0.5: 1200; 0.8: 650"}. */
    public static CycleLife parse(CharSequence text) {
        return new CycleLife(Arrays.stream(text.toString().split(";", -1))
                .map(point -> point.split(":", 2))
                .map(pair -> new Point(Ratio.parse(pair[0]), (Integer)
                        Scalars.parse(int.class, pair.length < 2 ? "" : pair[1].strip())))
                .toList());
    }

    /** Cycles of this depth until it is worn. */
    public double at(Ratio depth) {
        int deeper = 0;
        while (deeper < points.size() && points.get(deeper).depth().compareTo(depth) < 0) {
            deeper++;
        }
        if (deeper == 0) {
            return along(points.get(0), SAME_THROUGHPUT, depth);
        }
        Point shallower = points.get(deeper - 1);
        return deeper < points.size()
                ? along(shallower, slope(shallower, points.get(deeper)), depth)
                : along(shallower, lastSlope(), depth);
    }

    private static double along(Point from, double slope, Ratio depth) {
        return from.cycles() * Math.pow(depth.fraction() / from.depth().fraction(), slope);
    }

    private static double slope(Point shallow, Point deep) {
        return Math.log((double) deep.cycles() / shallow.cycles())
                / Math.log(deep.depth().fraction() / shallow.depth().fraction());
    }

    private double lastSlope() {
        int last = points.size() - 1;
        return last == 0 ? SAME_THROUGHPUT : Math.min(SAME_THROUGHPUT, slope(points.get(last - 1), points.get(last)));
    }

    @Override
    public String toString() {
        return String.join(
                "; ",
                points.stream()
                        .map(point -> point.depth() + ": " + point.cycles())
                        .toList());
    }
}
