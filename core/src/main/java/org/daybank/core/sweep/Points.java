package org.daybank.core.sweep;

import java.util.List;
import org.daybank.core.sweep.kernel.LatinHypercube;
import org.daybank.core.sweep.kernel.Mix;
import org.daybank.core.sweep.kernel.Sobol;

/** Where each row stands on each axis: a function of the number of the row and of the seed, and of nothing else. */
interface Points {
    /** How many rows there are. */
    long rows();

    /** Whether positions are numbers of values on a grid, and not probabilities. */
    default boolean grid() {
        return false;
    }

    /** The position of a row on one axis. */
    double position(long row, int axis);

    /** The points that a way of sampling chooses. */
    static Points of(Sampling sampling, List<AxisValues> axes) {
        if (sampling.method() == Sampling.Method.GRID || sampling.count() == null) {
            return grid(axes);
        }
        long count = sampling.count();
        int seed = sampling.seed();
        return switch (sampling.method()) {
            case GRID -> grid(axes);
            case RANDOM -> drawn(count, (row, axis) -> Mix.unit(Mix.bits(seed, axis, row)));
            case LATIN_HYPERCUBE -> drawn(count, new LatinHypercube(count, seed)::coordinate);
            case SOBOL -> drawn(count, seed == 0 ? Sobol::coordinate : (row, axis) -> Sobol.shifted(row, axis, seed));
        };
    }

    /** The coordinate of a row on one axis, from 0 to below 1. */
    interface Coordinate {
        double of(long row, int axis);
    }

    /** So many points with coordinates from 0 to below 1. */
    static Points drawn(long count, Coordinate coordinate) {
        return new Points() {
            @Override
            public long rows() {
                return count;
            }

            @Override
            public double position(long row, int axis) {
                return coordinate.of(row, axis);
            }
        };
    }

    /** Every combination, the last axis fastest; as many rows as a {@code long} can count, or {@link Long#MAX_VALUE}. */
    private static Points grid(List<AxisValues> axes) {
        long[] stride = new long[axes.size()];
        long[] counts = axes.stream().mapToLong(AxisValues::count).toArray();
        long rows = 1;
        for (int axis = axes.size() - 1; axis >= 0; axis--) {
            stride[axis] = rows;
            rows = rows > Long.MAX_VALUE / counts[axis] ? Long.MAX_VALUE : rows * counts[axis];
        }
        long all = rows;
        return new Points() {
            @Override
            public long rows() {
                return all;
            }

            @Override
            public boolean grid() {
                return true;
            }

            @Override
            public double position(long row, int axis) {
                return row / stride[axis] % counts[axis];
            }
        };
    }
}
