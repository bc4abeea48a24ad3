package org.daybank.core.sweep.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.LongUnaryOperator;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LatinHypercubeProperties {
    @Property(tries = 200)
    void everyStratumOfEveryAxisHoldsOnePoint(
            @ForAll @IntRange(min = 1, max = 3000) int count, @ForAll int seed, @ForAll @IntRange(max = 40) int axis) {
        LatinHypercube points = new LatinHypercube(count, seed);
        assertThat(LongStream.range(0, count)
                        .map(row -> (long) (points.coordinate(row, axis) * count))
                        .distinct()
                        .count())
                .isEqualTo(count);
        assertThat(LongStream.range(0, count).mapToDouble(row -> points.coordinate(row, axis)))
                .allMatch(unit -> unit >= 0 && unit < 1);
    }

    /** With so many strata equal orders on two axes, or in the order of the rows, would be no accident. */
    @Property(tries = 50)
    void axesAreInOrdersOfTheirOwn(@ForAll int seed, @ForAll @IntRange(max = 30) int axis) {
        LatinHypercube points = new LatinHypercube(1000, seed);
        assertThat(agreements(row -> points.stratum(row, axis), row -> points.stratum(row, axis + 1)))
                .isLessThan(20);
        assertThat(agreements(row -> points.stratum(row, axis), row -> row)).isLessThan(20);
    }

    private static long agreements(LongUnaryOperator one, LongUnaryOperator other) {
        return LongStream.range(0, 1000)
                .filter(row -> one.applyAsLong(row) == other.applyAsLong(row))
                .count();
    }
}
