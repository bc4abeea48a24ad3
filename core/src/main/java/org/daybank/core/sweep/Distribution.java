package org.daybank.core.sweep;

import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.sweep.kernel.NormalQuantile;

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
            Ordered.check("to", from, to);
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
            Ordered.check("likeliest", from, likeliest);
            Ordered.check("to", likeliest, to);
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
            Class<?> kind = mean instanceof Temperature ? TemperatureDifference.class : mean.getClass();
            new Validation()
                    .that(
                            NumberForm.isNumber(mean)
                                    && deviation.getClass() == kind
                                    && NumberForm.number(deviation) >= 0,
                            "deviation",
                            ProblemCode.INCONSISTENT,
                            "deviation must be of the kind of the mean %s and not negative, but was %s."
                                    .formatted(mean, deviation))
                    .done();
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
    record LogNormal(Object median, double factor) implements Distribution {
        /** Refuses what has no logarithm. */
        public LogNormal {
            new Validation()
                    .that(
                            NumberForm.isNumber(median) && NumberForm.number(median) > 0,
                            "median",
                            ProblemCode.OUT_OF_RANGE,
                            "median must be above zero, but was " + median + ".")
                    .within("factor", factor, 1.0, 1e6)
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

        private static void check(String field, Object lower, Object upper) {
            new Validation()
                    .that(
                            NumberForm.isNumber(lower)
                                    && lower.getClass() == upper.getClass()
                                    && NumberForm.number(lower) <= NumberForm.number(upper),
                            field,
                            ProblemCode.INCONSISTENT,
                            "%s must be of the kind of %s and no less, but was %s.".formatted(field, lower, upper))
                    .done();
        }
    }
}
