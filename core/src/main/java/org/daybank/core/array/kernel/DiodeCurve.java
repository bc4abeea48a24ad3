package org.daybank.core.array.kernel;

/**
 * The current-voltage curve of a single diode with series and shunt resistance, on bare numbers.
 *
 * <p>It is explicit in the voltage x across the junction: {@code I(x) = I_L − I_0·(e^(x/a) − 1) − x·G} and {@code V = x − I·R_s}.
 * The exponential is written {@code D·e^((x − U)/a)} with the diode current D at a known voltage U, so that nothing overflows
 * however cold and sharp the junction is.
 *
 * @param lightAmperes light current I_L, above zero
 * @param saturationAmperes saturation current I_0, which may vanish
 * @param diodeAmperes current D of the diode at {@code diodeVolts}, above zero
 * @param diodeVolts voltage U
 * @param idealityVolts modified ideality a
 * @param seriesOhms series resistance R_s
 * @param shuntSiemens shunt conductance G
 */
public record DiodeCurve(
        double lightAmperes,
        double saturationAmperes,
        double diodeAmperes,
        double diodeVolts,
        double idealityVolts,
        double seriesOhms,
        double shuntSiemens) {
    /** Steps end when they move the junction by less than this share of a; Newton's next step would be the square of it. */
    private static final double CLOSE = 1e-7;

    /** A bound on loops that end after three to ten steps; bisection alone would end within it. */
    private static final int MOST_STEPS = 100;

    /** Largest power in W. */
    public double maximumPowerWatts() {
        double junction = maximumPowerJunctionVolts();
        double amperes = junctionAmperes(junction);
        return amperes * (junction - amperes * seriesOhms);
    }

    /** Current at the terminals in A for a voltage across the junction. */
    public double junctionAmperes(double junctionVolts) {
        return lightAmperes
                + saturationAmperes
                - diodeAmperes * Math.exp((junctionVolts - diodeVolts) / idealityVolts)
                - shuntSiemens * junctionVolts;
    }

    /** Where the current ends, in V: the root of I(x), met from above, where Newton's method on a convex curve never overshoots. */
    public double openCircuitVolts() {
        double x = beyondOpenCircuitVolts();
        for (int step = 0; step < MOST_STEPS; step++) {
            double diode = diodeAmperes * Math.exp((x - diodeVolts) / idealityVolts);
            double amperes = lightAmperes + saturationAmperes - diode - shuntSiemens * x;
            double move = amperes / (diode / idealityVolts + shuntSiemens);
            x += move;
            if (Math.abs(move) < CLOSE * idealityVolts) {
                break;
            }
        }
        return x;
    }

    /**
     * Current in A at a voltage from zero; 0 beyond the open-circuit voltage. The junction solves {@code x − I(x)·R_s = V},
     * convex in x, again met from above: the current is at most that without series resistance, the junction at most at open
     * circuit.
     */
    public double amperes(double volts) {
        double most = junctionAmperes(volts);
        if (most <= 0) {
            return 0;
        }
        double x = volts + most * seriesOhms;
        if (x > diodeVolts) {
            x = Math.min(x, beyondOpenCircuitVolts());
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double diode = diodeAmperes * Math.exp((x - diodeVolts) / idealityVolts);
            double amperes = lightAmperes + saturationAmperes - diode - shuntSiemens * x;
            double slope = 1 + seriesOhms * (diode / idealityVolts + shuntSiemens);
            double move = (volts + amperes * seriesOhms - x) / slope;
            x += move;
            if (Math.abs(move) < CLOSE * idealityVolts) {
                break;
            }
        }
        return Math.max(0, junctionAmperes(x));
    }

    /**
     * Voltage at the terminals in V at a current, the inverse of {@link #amperes}; negative where more is forced through than
     * the light drives. The junction solves {@code I(x) = I}, concave and falling, met from above.
     */
    public double volts(double amperes) {
        double left = lightAmperes + saturationAmperes - amperes;
        double x = left > 0 ? diodeVolts + idealityVolts * Math.log(left / diodeAmperes) : 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double diode = diodeAmperes * Math.exp((x - diodeVolts) / idealityVolts);
            double move = (left - diode - shuntSiemens * x) / (diode / idealityVolts + shuntSiemens);
            x += move;
            if (Math.abs(move) < CLOSE * idealityVolts) {
                break;
            }
        }
        return x - amperes * seriesOhms;
    }

    /**
     * Voltage across the junction where the power is largest. With h = I + I'·(x − 2·I·R_s), which has the sign of dP/dV and
     * falls through zero once, Newton's steps are kept inside the bracket that the signs seen so far leave.
     */
    public double maximumPowerJunctionVolts() {
        double low = 0;
        double high = beyondOpenCircuitVolts();
        // exact without resistances but for one logarithm of a logarithm
        double x = high - idealityVolts * Math.log(1 + high / idealityVolts);
        for (int step = 0; step < MOST_STEPS; step++) {
            double diode = diodeAmperes * Math.exp((x - diodeVolts) / idealityVolts);
            double amperes = lightAmperes + saturationAmperes - diode - shuntSiemens * x;
            double slope = -diode / idealityVolts - shuntSiemens;
            double bend = -diode / (idealityVolts * idealityVolts);
            double inner = x - 2 * amperes * seriesOhms;
            double h = amperes + slope * inner;
            if (h > 0) {
                low = x;
            } else {
                high = x;
            }
            double next = x - h / (2 * slope + bend * inner - 2 * slope * slope * seriesOhms);
            if (!(next >= low && next <= high)) {
                next = (low + high) / 2;
            }
            double move = next - x;
            x = next;
            if (Math.abs(move) < CLOSE * idealityVolts) {
                break;
            }
        }
        return x;
    }

    /** The open-circuit voltage of a cell without shunt, which is never below that of this one. */
    private double beyondOpenCircuitVolts() {
        return diodeVolts + idealityVolts * Math.log((lightAmperes + saturationAmperes) / diodeAmperes);
    }
}
