package org.daybank.core.load;

import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What an inverter draws from the bank for what it gives: {@code P_dc = P_ac + P_rated · (k0 + k1·p + k2·p²)} with {@code p =
 * P_ac / P_rated}; Schmidt and Sauer 1996. The idle draw {@code k0 · P_rated} is part of it and counted once.
 *
 * @param rating rated power, above zero
 * @param k0 idle draw over rating
 * @param k1 loss in proportion to power
 * @param k2 loss in proportion to the square of power
 */
public record InverterCurve(
        @Bounds(exclusiveMinimum = "0 W", maximum = "1000000 kW")
        Power rating,

        @Bounds(minimum = "0", maximum = "1") Ratio k0,
        @Bounds(minimum = "-0.5", maximum = "5") Ratio k1,
        @Bounds(minimum = "0", maximum = "5") Ratio k2) {
    /** Below this, part of the idle draw would vanish as soon as anything is given. */
    private static final Ratio LEAST_K1 = Ratio.of(-0.5);

    /** Validates the components. */
    public InverterCurve {
        Validation.of(InverterCurve.class, rating, k0, k1, k2).done();
    }

    /** One efficiency and an idle draw, until an inverter is known. */
    public static InverterCurve stated(Power rating, Ratio idleShare, Ratio efficiency) {
        return new InverterCurve(rating, idleShare, Ratio.of(1 / efficiency.fraction() - 1), Ratio.ZERO);
    }

    /**
     * The curve through a data sheet's idle draw, peak efficiency and efficiency at full load.
     *
     * <p>The efficiency {@code p / (p + k0 + k1·p + k2·p²)} peaks at {@code p = √(k0/k2)} with {@code 1/η = 1 + k1 +
     * 2·√(k0·k2)}; with the condition at {@code p = 1} this gives {@code √k2 = √k0 + √(1/η_full − 1/η_peak)}, of the two
     * solutions the one whose peak lies at or below full load.
     *
     * @throws org.daybank.core.schema.InvalidInput when the peak efficiency is below that at full load, or the idle draw too
     *     large to reach it
     */
    public static InverterCurve fit(Power rating, Power idle, Ratio peakEfficiency, Ratio fullLoadEfficiency) {
        new Validation()
                .that(
                        peakEfficiency.compareTo(fullLoadEfficiency) >= 0,
                        "peakEfficiency",
                        ProblemCode.INCONSISTENT,
                        "peakEfficiency %s must not be below fullLoadEfficiency %s"
                                .formatted(peakEfficiency, fullLoadEfficiency))
                .done();
        double k0 = idle.dividedBy(rating);
        double rootK2 = Math.sqrt(k0) + Math.sqrt(1 / fullLoadEfficiency.fraction() - 1 / peakEfficiency.fraction());
        double k1 = 1 / peakEfficiency.fraction() - 1 - 2 * Math.sqrt(k0) * rootK2;
        new Validation()
                .that(
                        k1 >= LEAST_K1.fraction(),
                        "idle",
                        ProblemCode.INCONSISTENT,
                        "idle %s is too much for a peak efficiency of %s".formatted(idle, peakEfficiency))
                .done();
        return new InverterCurve(rating, Ratio.of(k0), Ratio.of(k1), Ratio.of(rootK2 * rootK2));
    }

    /** The idle draw. */
    public Power idle() {
        return rating.times(k0);
    }

    /** What is drawn from the bank to give a steady power. */
    public Power drawFor(Power output) {
        return Power.watts(drawWatts(output.watts(), 0));
    }

    /**
     * Mean draw in watts for an output that varies: the square of the output is on average its mean squared plus its
     * variance.
     */
    double drawWatts(double meanWatts, double varianceWattsSquared) {
        double squares = meanWatts * meanWatts + varianceWattsSquared;
        return rating.watts() * k0.fraction()
                + (1 + k1.fraction()) * meanWatts
                + k2.fraction() * squares / rating.watts();
    }
}
