package org.daybank.core.sweep.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Set;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import net.jqwik.api.Example;
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
    /** The published outputs of SplitMix64 for the states 0 and 1234567. */
    @Example
    void mixedBitsAreThoseOfSplitMix64() {
        assertThat(Mix.bits(0)).isEqualTo(0xE220A8397B1DCDAFL);
        assertThat(Long.toUnsignedString(Mix.bits(1_234_567))).isEqualTo("6457827717110365317");
        assertThat(Long.toUnsignedString(Mix.bits(1_234_567 + 0x9E3779B97F4A7C15L)))
                .isEqualTo("3203168211198807973");
        assertThat(Mix.unit(-1L)).isEqualTo(Math.nextDown(1.0));
        assertThat(Mix.unit(1L << 63)).isEqualTo(0.5);
    }

    /** Each of the three numbers counts, and their places do. */
    @Example
    void mixedBitsOfThreeNumbersKnowThemApart() {
        assertThat(Set.of(
                        Mix.bits(1, 2, 3),
                        Mix.bits(1, 3, 2),
                        Mix.bits(2, 1, 3),
                        Mix.bits(3, 2, 1),
                        Mix.bits(1, 2, 4),
                        Mix.bits(0, 2, 3)))
                .hasSize(6);
    }

    /** In its stratum a point lies anywhere, with a mean of a half and a variance of a twelfth. */
    @Property(tries = 20)
    void aPointLiesAnywhereInItsStratum(@ForAll int seed) {
        int count = 4000;
        LatinHypercube cube = new LatinHypercube(count, seed);
        double[] places = IntStream.range(0, count)
                .mapToDouble(row -> cube.coordinate(row, 3) * count - cube.stratum(row, 3))
                .toArray();
        // five standard errors: of the mean √(1/12/4000), of the variance √(1/180/4000)
        assertThat(Arrays.stream(places).average().orElseThrow()).isEqualTo(0.5, within(5 * 0.00456));
        assertThat(Arrays.stream(places)
                        .map(place -> (place - 0.5) * (place - 0.5))
                        .average()
                        .orElseThrow())
                .isEqualTo(1 / 12.0, within(5 * 0.00118));
        assertThat(Arrays.stream(places)).allMatch(place -> place > -1e-9 && place < 1 + 1e-9);
    }

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
