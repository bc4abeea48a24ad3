package org.daybank.core.sweep.kernel;

import java.util.Arrays;
import org.daybank.core.working.Table;

/**
 * The sequence of Sobol with the direction numbers of Joe and Kuo 2008 (SIAM Journal on Scientific Computing 30:2635–2654),
 * in the order of the Gray code, from the point at the origin on.
 */
public final class Sobol {
    private static final int BITS = 52;
    private static final double STEP = 0x1p-52;

    /** Direction numbers by dimension and bit, as whole multiples of 2⁻⁵². */
    private static final long[][] DIRECTIONS = directions();

    private Sobol() {}

    /** How many coordinates a point can have. */
    public static int dimensions() {
        return DIRECTIONS.length;
    }

    /** One coordinate of one point, from 0 to below 1. */
    public static double coordinate(long row, int dimension) {
        return bits(row, dimension) * STEP;
    }

    /** The same after a digital shift: each binary digit is turned over, or not, as the seed says for this dimension. */
    public static double shifted(long row, int dimension, long seed) {
        return (bits(row, dimension) ^ (Mix.bits(seed, dimension, 0) >>> (64 - BITS))) * STEP;
    }

    private static long bits(long row, int dimension) {
        long[] directions = DIRECTIONS[dimension];
        long point = 0;
        int bit = 0;
        for (long gray = row ^ (row >>> 1); gray != 0; gray >>>= 1) {
            // without a branch: half of the bits are set
            point ^= directions[bit++] & -(gray & 1);
        }
        return point;
    }

    private static long[][] directions() {
        Table table = Table.resource(Sobol.class, "sobol-directions.csv");
        long[][] directions = new long[table.rows().size() + 1][BITS];
        Arrays.setAll(directions[0], bit -> 1L << (BITS - 1 - bit));
        for (int i = 1; i < directions.length; i++) {
            Table.Row row = table.rows().get(i - 1);
            int polynomial = row.value(Integer.class, "a");
            long[] initial = Arrays.stream(row.text("m").split(" ", -1))
                    .mapToLong(Long::parseLong)
                    .toArray();
            fill(directions[i], polynomial, initial);
        }
        return directions;
    }

    /** The recurrence of the primitive polynomial whose inner coefficients are the bits of {@code polynomial}. */
    private static void fill(long[] directions, int polynomial, long[] initial) {
        int degree = initial.length;
        for (int bit = 0; bit < BITS; bit++) {
            if (bit < degree) {
                directions[bit] = initial[bit] << (BITS - 1 - bit);
                continue;
            }
            directions[bit] = directions[bit - degree] ^ (directions[bit - degree] >>> degree);
            for (int k = 1; k < degree; k++) {
                directions[bit] ^= ((polynomial >>> (degree - 1 - k)) & 1) * directions[bit - k];
            }
        }
    }
}
