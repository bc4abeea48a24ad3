package org.daybank.core.bank;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * Share of the rated capacity that a battery delivers at a temperature, from published points; linear between them, never
 * more than the warmest point says, and unknown below the coldest.
 *
 * @param points share by temperature in °C
 */
public record TemperatureCurve(
        @Bounds(minimumItems = 1, maximumItems = 100) List<Point> points) {

    /**
     * One published point.
     *
     * @param temperature of the cells
     * @param share of the rated capacity, from 0.05 to 1.5
     */
    public record Point(
            @Bounds(minimum = "-100 Cel", maximum = "100 Cel")
            Temperature temperature,

            @Bounds(minimum = "0.05", maximum = "1.5") Ratio share) {
        /** Validates the components. */
        public Point {
            Validation.of(Point.class, temperature, share).done();
        }
    }

    /**
     * Keeps a copy, coldest first.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no point, a share is none that a battery delivers, or two
     *     points stand at one temperature
     */
    public TemperatureCurve {
        Validation.of(TemperatureCurve.class, points).done();
        new Validation()
                .that(
                        points.stream().map(Point::temperature).distinct().count() == points.size(),
                        "points",
                        ProblemCode.INCONSISTENT,
                        "points must each stand at a temperature of their own.")
                .done();
        points = points.stream()
                .sorted((a, b) -> a.temperature().compareTo(b.temperature()))
                .toList();
    }

    /** Reads points written as {@code "-20 Cel: 0.62; 0 Cel: 0.85; 25 Cel: 1"}. */
    public static TemperatureCurve parse(CharSequence text) {
        return new TemperatureCurve(Arrays.stream(text.toString().split(";", -1))
                .map(point -> point.split(":", 2))
                .map(pair -> new Point(Temperature.parse(pair[0]), Ratio.parse(pair.length < 2 ? "" : pair[1])))
                .toList());
    }

    /** The coldest temperature of which something is known. */
    public Temperature coldest() {
        return points.get(0).temperature();
    }

    /** The share at a temperature; empty below the coldest published point. */
    public Optional<Ratio> at(Temperature temperature) {
        if (temperature.compareTo(coldest()) < 0) {
            return Optional.empty();
        }
        Point below = points.get(0);
        for (Point point : points) {
            if (point.temperature().compareTo(temperature) > 0) {
                double along = temperature.minus(below.temperature()).kelvins()
                        / point.temperature().minus(below.temperature()).kelvins();
                double share = below.share().fraction()
                        + along * (point.share().fraction() - below.share().fraction());
                return Optional.of(Ratio.of(share));
            }
            below = point;
        }
        return Optional.of(below.share());
    }

    @Override
    public String toString() {
        return String.join(
                "; ",
                points.stream()
                        .map(point -> point.temperature() + ": " + point.share())
                        .toList());
    }
}
