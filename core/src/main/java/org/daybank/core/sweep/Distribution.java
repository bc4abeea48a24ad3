package org.daybank.core.sweep;

import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.sweep.kernel.NormalQuantile;
import org.jspecify.annotations.Nullable;

/**
 * How likely each value of an uncertain quantity is. Its values are of one type: quantities, ratios or numbers.
 *
 * <p>All are drawn by their inverse distribution functions, so that whatever is even in the sample stays so in the values.
 */
public sealed interface Distribution {
    /** A value that tells the type of those drawn. */
    Object example();

    /** The number, in base units, below which so much of the probability lies. */
    double quantile(double unit);

    /** Every value between the ends as likely as any other. */
    static <T> Distribution uniform(T from, T to) {
        return new Uniform(from, to);
    }

    /** Rising in a line from the lower end to the likeliest value, and falling from there to the upper end. */
    static <T> Distribution triangular(T from, T likeliest, T to) {
        return new Triangular(from, likeliest, to);
    }

    /** The bell of Gauss, by mean and standard deviation; a deviation of temperatures is a difference of temperatures. */
    static Distribution normal(Object mean, Object deviation) {
        return new Normal(mean, deviation);
    }

    /**
     * Values whose logarithms are normal.
     *
     * @param median half of the values lie below
     * @param factor geometric standard deviation, at least 1: about two thirds of the values lie between the median divided
     *     by it and times it
     */
    static Distribution logNormal(Object median, double factor) {
        return new LogNormal(median, factor);
    }

    /**
     * Every value between the ends as likely as any other.
     *
     * @param from lower end
     * @param to upper end
     */
    record Uniform(Object from, Object to) implements Distribution {
        /** Refuses ends that do not belong together. */
        public Uniform {
            Ordered.check(Validation.of(Uniform.class, from, to), "to", from, to)
                    .done();
        }

        @Override
        public Object example() {
            return from;
        }

        @Override
        public double quantile(double unit) {
            return NumberForm.number(from) * (1 - unit) + NumberForm.number(to) * unit;
        }
    }

    /**
     * Rising in a line from the lower end to the likeliest value, and falling from there to the upper end.
     *
     * @param from lower end
     * @param likeliest where the density is highest
     * @param to upper end
     */
    record Triangular(Object from, Object likeliest, Object to) implements Distribution {
        /** Refuses values out of order. */
        public Triangular {
            Validation checks = Validation.of(Triangular.class, from, likeliest, to);
            Ordered.check(checks, "likeliest", from, likeliest);
            Ordered.check(checks, "to", likeliest, to).done();
        }

        @Override
        public Object example() {
            return likeliest;
        }

        @Override
        public double quantile(double unit) {
            double low = NumberForm.number(from);
            double mode = NumberForm.number(likeliest);
            double high = NumberForm.number(to);
            double width = high - low;
            double below = width == 0 ? 0 : (mode - low) / width;
            return unit < below
                    ? low + Math.sqrt(unit * width * (mode - low))
                    : high - Math.sqrt((1 - unit) * width * (high - mode));
        }
    }

    /**
     * The bell of Gauss.
     *
     * @param mean its middle
     * @param deviation its standard deviation, not negative
     */
    record Normal(Object mean, Object deviation) implements Distribution {
        /** Refuses a deviation of another kind or below zero. */
        public Normal {
            Validation.of(Normal.class, mean, deviation)
                    .that(
                            mean == null
                                    || deviation == null
                                    || (NumberForm.isNumber(mean)
                                            && deviation.getClass() == kindOfDeviation(mean)
                                            && NumberForm.number(deviation) >= 0),
                            "deviation",
                            ProblemCode.INCONSISTENT,
                            "deviation must be of the kind of the mean %s and not negative, but was %s."
                                    .formatted(mean, deviation))
                    .done();
        }

        private static Class<?> kindOfDeviation(Object mean) {
            return mean instanceof Temperature ? TemperatureDifference.class : mean.getClass();
        }

        @Override
        public Object example() {
            return mean;
        }

        @Override
        public double quantile(double unit) {
            return NumberForm.number(mean) + NumberForm.number(deviation) * NormalQuantile.of(unit);
        }
    }

    /**
     * Values whose logarithms are normal.
     *
     * @param median half of the values lie below; above zero
     * @param factor geometric standard deviation, at least 1
     */
    record LogNormal(
            Object median,
            @Bounds(minimum = "1", maximum = "1000000") double factor) implements Distribution {
        /** Refuses what has no logarithm. */
        public LogNormal {
            Validation.of(LogNormal.class, median, factor)
                    .that(
                            median == null || (NumberForm.isNumber(median) && NumberForm.number(median) > 0),
                            "median",
                            ProblemCode.OUT_OF_RANGE,
                            "median must be above zero, but was " + median + ".")
                    .done();
        }

        @Override
        public Object example() {
            return median;
        }

        @Override
        public double quantile(double unit) {
            return NumberForm.number(median) * Math.exp(Math.log(factor) * NormalQuantile.of(unit));
        }
    }

    /** The check that two values are of one kind and in order. */
    final class Ordered {
        private Ordered() {}

        private static Validation check(
                Validation checks, String field, @Nullable Object lower, @Nullable Object upper) {
            return checks.that(
                    lower == null
                            || upper == null
                            || (NumberForm.isNumber(lower)
                                    && lower.getClass() == upper.getClass()
                                    && NumberForm.number(lower) <= NumberForm.number(upper)),
                    field,
                    ProblemCode.INCONSISTENT,
                    "%s must be of the kind of %s and no less, but was %s.".formatted(field, lower, upper));
        }
    }
}
