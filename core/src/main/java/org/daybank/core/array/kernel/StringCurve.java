package org.daybank.core.array.kernel;

import java.util.Arrays;

/**
 * The power of modules in series against their common current, on bare numbers. A module that cannot carry the current is
 * passed by: its diodes hold it at a small negative voltage.
 *
 * <p>Between two currents at which a module gives way, the power {@code I · ΣV(I)} is concave, for each V(I) is concave and
 * falling: on each such stretch the largest power is found by narrowing, and the largest of them is that of the string, however
 * many peaks it has.
 */
public final class StringCurve {
    /** Each narrowing leaves this share of the stretch: the golden section. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Leaves 1e-13 of a stretch; the power there is flat to the last digit long before. */
    private static final int NARROWINGS = 62;

    private final DiodeCurve[] curves;
    private final int[] counts;
    private final int darkCount;
    private final double bypassVolts;
    private final double[] carriedAmperes;

    /**
     * A string.
     *
     * @param curves of the modules that have light, one for each group
     * @param counts modules in each group
     * @param darkCount modules without light, which are always passed by
     * @param bypassVolts drop across a module that is passed by, not negative
     */
    public StringCurve(DiodeCurve[] curves, int[] counts, int darkCount, double bypassVolts) {
        this.curves = curves.clone();
        this.counts = counts.clone();
        this.darkCount = darkCount;
        this.bypassVolts = bypassVolts;
        this.carriedAmperes = Arrays.stream(curves)
                .mapToDouble(curve -> curve.amperes(-bypassVolts))
                .toArray();
    }

    /** Current in A up to which a group carries it without being passed by. */
    public double carriedAmperes(int group) {
        return carriedAmperes[group];
    }

    /** Voltage in V of the string at a current. */
    public double volts(double amperes) {
        double volts = -bypassVolts * darkCount;
        for (int i = 0; i < curves.length; i++) {
            volts += counts[i] * groupVolts(i, amperes);
        }
        return volts;
    }

    /** Voltage in V of one module of a group at a current. */
    public double groupVolts(int group, double amperes) {
        return amperes > carriedAmperes[group] ? -bypassVolts : Math.max(-bypassVolts, curves[group].volts(amperes));
    }

    /** The current in A at which the power is largest; 0 in the dark. */
    public double bestAmperes() {
        double[] ends = Arrays.stream(carriedAmperes).sorted().distinct().toArray();
        double best = 0;
        double bestWatts = 0;
        double from = 0;
        for (double to : ends) {
            double amperes = bestBetween(from, to);
            double watts = amperes * volts(amperes);
            if (watts > bestWatts) {
                best = amperes;
                bestWatts = watts;
            }
            from = to;
        }
        return best;
    }

    private double bestBetween(double from, double to) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double leftWatts = left * volts(left);
        double rightWatts = right * volts(right);
        for (int step = 0; step < NARROWINGS; step++) {
            if (leftWatts > rightWatts) {
                high = right;
                right = left;
                rightWatts = leftWatts;
                left = high - GOLDEN * (high - low);
                leftWatts = left * volts(left);
            } else {
                low = left;
                left = right;
                leftWatts = rightWatts;
                right = low + GOLDEN * (high - low);
                rightWatts = right * volts(right);
            }
        }
        return (low + high) / 2;
    }
}
