package org.daybank.core.load;

import java.time.Month;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Expected power of the loads in each hour of a day of one month, and its variance: loads switch on and off independently
 * of each other, and losses that grow with the square of the power depend on that.
 */
final class HourlyDraw {
    private final double[] acWatts = new double[24];
    private final double[] acVariance = new double[24];
    private final double[] dcWatts = new double[24];
    private final double[] dcVariance = new double[24];
    private final boolean acUsed;

    private HourlyDraw(boolean acUsed) {
        this.acUsed = acUsed;
    }

    /**
     * The draw of some loads in a month.
     *
     * @param dayShare share of days on which a load is used
     */
    static HourlyDraw of(List<Load> loads, double[][] onShares, Month month, ToDoubleFunction<Load> dayShare) {
        HourlyDraw draw =
                new HourlyDraw(loads.stream().anyMatch(load -> load.supply() == Supply.AC && load.usedIn(month)));
        for (int i = 0; i < loads.size(); i++) {
            Load load = loads.get(i);
            if (load.usedIn(month)) {
                draw.add(load, onShares[i], dayShare.applyAsDouble(load));
            }
        }
        return draw;
    }

    /** Mean energy {@code n · (P·h·duty + P_standby·(24 − h)) · d/7}, spread over its hours. */
    private void add(Load load, double[] onShare, double dayShare) {
        double running = load.runningPower().watts();
        double standby = load.standby().watts() * load.count();
        double dutyCycle = load.resolved().dutyCycle().fraction();
        double[] watts = load.supply() == Supply.AC ? acWatts : dcWatts;
        double[] variance = load.supply() == Supply.AC ? acVariance : dcVariance;
        for (int hour = 0; hour < 24; hour++) {
            double drawing = onShare[hour] * dutyCycle * dayShare;
            double standing = (1 - onShare[hour]) * dayShare;
            double mean = running * drawing + standby * standing;
            watts[hour] += mean;
            // never below zero, whatever rounding leaves of a load that always draws the same
            variance[hour] += Math.max(0, running * running * drawing + standby * standby * standing - mean * mean);
        }
    }

    /** Mean power of AC loads in an hour. */
    double acWatts(int hour) {
        return acWatts[hour];
    }

    /** Variance of it, in watts squared. */
    double acVariance(int hour) {
        return acVariance[hour];
    }

    /** Mean power of DC loads in an hour. */
    double dcWatts(int hour) {
        return dcWatts[hour];
    }

    /** Variance of it, in watts squared. */
    double dcVariance(int hour) {
        return dcVariance[hour];
    }

    /** Whether any AC load is used in the month. */
    boolean acUsed() {
        return acUsed;
    }

    /** Energy of AC loads over the day, in watt-hours. */
    double acDaily() {
        return daily(acWatts);
    }

    /** Energy of DC loads over the day, in watt-hours. */
    double dcDaily() {
        return daily(dcWatts);
    }

    static double daily(double[] hourlyWatts) {
        double sum = 0;
        for (double watts : hourlyWatts) {
            sum += watts;
        }
        return sum;
    }
}
