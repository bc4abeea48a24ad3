package org.daybank.core.sweep;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;

/** The values of an axis in the type of the place that it varies: by number on a grid, by probability where they are drawn. */
final class AxisValues {
    private final int count;
    private final IntFunction<Object> byIndex;
    private final DoubleFunction<Object> byProbability;

    private AxisValues(int count, IntFunction<Object> byIndex, DoubleFunction<Object> byProbability) {
        this.count = count;
        this.byIndex = byIndex;
        this.byProbability = byProbability;
    }

    static AxisValues listed(List<Object> values) {
        int count = values.size();
        return new AxisValues(count, values::get, unit -> values.get((int) (unit * count)));
    }

    static AxisValues range(Axis.Range range, NumberForm form) {
        double from = NumberForm.number(range.from());
        double to = NumberForm.number(range.to());
        int steps = range.count() - 1;
        DoubleUnaryOperator along = range.logarithmic()
                ? share -> Math.exp(Math.log(from) * (1 - share) + Math.log(to) * share)
                : share -> from * (1 - share) + to * share;
        IntFunction<Object> byIndex = index -> {
            if (index == 0 || index == steps) {
                return form.value(index == 0 ? from : to);
            }
            // one division at the end keeps round steps round
            double number = range.logarithmic()
                    ? along.applyAsDouble((double) index / steps)
                    : (from * (steps - index) + to * index) / steps;
            return form.value(number);
        };
        return new AxisValues(range.count(), byIndex, unit -> form.value(along.applyAsDouble(unit)));
    }

    static AxisValues drawn(Distribution distribution, NumberForm form) {
        return new AxisValues(
                0,
                index -> {
                    throw new IllegalStateException("A distribution has no values on a grid");
                },
                unit -> form.value(distribution.quantile(unit)));
    }

    /** How many values there are on a grid; 0 when they can only be drawn. */
    int count() {
        return count;
    }

    Object at(int index) {
        return byIndex.apply(index);
    }

    Object drawn(double unit) {
        return byProbability.apply(unit);
    }
}
