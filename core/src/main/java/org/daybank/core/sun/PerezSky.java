package org.daybank.core.sun;

import java.util.Arrays;
import java.util.List;
import org.daybank.core.working.Table;

/**
 * Brightness of the sky around the sun and along the horizon: R. Perez and others, Solar Energy 44 (1990) 271–289, eq. 1
 * (clearness), 2 (brightness) and 9 (tilted plane); coefficients in {@code perez-1990.csv}.
 */
final class PerezSky {
    private static final int BINS = 8;
    private static final double KAPPA = 1.041;
    private static final double[] UPPER = new double[BINS];
    /** F11, F12, F13, F21, F22, F23 of one bin after the other. */
    private static final double[] F = new double[6 * BINS];

    static {
        List<Table.Row> rows = Table.resource(PerezSky.class, "perez-1990.csv").rows();
        for (int bin = 0; bin < BINS; bin++) {
            Table.Row row = rows.get(bin);
            UPPER[bin] = row.optionalValue(Double.class, "upper").orElse(Double.POSITIVE_INFINITY);
            List<String> columns = List.of("F11", "F12", "F13", "F21", "F22", "F23");
            for (int i = 0; i < columns.size(); i++) {
                F[6 * bin + i] = row.value(Double.class, columns.get(i));
            }
        }
    }

    private static final int STEPS_EACH_DEGREE = 10;
    private static final double[] BENDING = new double[90 * STEPS_EACH_DEGREE + 2];

    static {
        Arrays.setAll(BENDING, step -> 0.50572 * Math.pow(96.07995 - (double) step / STEPS_EACH_DEGREE, -1.6364));
    }

    private PerezSky() {}

    /** The zenith angle of a cosine from 0 to 1: M. Abramowitz, I. Stegun, eq. 4.4.46, right to 2e-8. */
    static double zenith(double cosZenith) {
        double u = cosZenith;
        double series =
                -0.0501743046 + u * (0.0308918810 + u * (-0.0170881256 + u * (0.0066700901 - u * 0.0012624911)));
        return Math.sqrt(1 - u) * (1.5707963050 + u * (-0.2145988016 + u * (0.0889789874 + u * series)));
    }

    /** Eq. 1. */
    static double clearness(double diffuse, double direct, double zenith) {
        double cube = KAPPA * zenith * zenith * zenith;
        return ((diffuse + direct) / diffuse + cube) / (1 + cube);
    }

    /** First coefficient of the bin that holds a clearness. */
    static int bin(double clearness) {
        int bin = 0;
        while (bin < BINS - 1 && clearness >= UPPER[bin]) {
            bin++;
        }
        return 6 * bin;
    }

    /** F₁, brightness around the sun, not below zero. */
    static double circumsolar(int bin, double brightness, double zenith) {
        return Math.max(0, F[bin] + F[bin + 1] * brightness + F[bin + 2] * zenith);
    }

    /** F₂, brightness along the horizon. */
    static double horizon(int bin, double brightness, double zenith) {
        return F[bin + 3] + F[bin + 4] * brightness + F[bin + 5] * zenith;
    }

    /**
     * How much more air the light passes than from straight above: F. Kasten, A. T. Young, Applied Optics 28 (1989)
     * 4735–4738. The power is read from a table, to 0.02 % with the sun on the horizon and better above it.
     *
     * @param zenith radians, to 90°
     * @param cosZenith its cosine
     */
    static double airMass(double zenith, double cosZenith) {
        double position = Math.toDegrees(zenith) * STEPS_EACH_DEGREE;
        int step = (int) position;
        double along = position - step;
        return 1 / (cosZenith + (1 - along) * BENDING[step] + along * BENDING[step + 1]);
    }
}
