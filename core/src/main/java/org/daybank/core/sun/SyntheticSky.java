package org.daybank.core.sun;

import java.time.Month;
import org.daybank.core.site.HourCalendar;

/**
 * Irradiance of the horizontal hour by hour, made up from twelve means: days follow each other as in the transition matrices
 * of Aguiar, Collares-Pereira and Conde (1988), hours as in the model of Aguiar and Collares-Pereira (Solar Energy 49 (1992)
 * 167–174): around a mean course, each hour leaning on the one before. Each day then gets its sum and each month its mean.
 */
final class SyntheticSky {
    /** Nothing clearer has been measured in whole days, and little in whole hours. */
    static final double CLEAREST_DAY = 0.9;

    static final double CLEAREST_HOUR = 0.95;
    private static final int HOURS_OF_A_DAY = 24;
    private static final int TRIES = 20;

    /** Range of daily clearness from which the hourly model was found. */
    private static final double DULLEST_PUBLISHED = 0.1;

    private static final double CLEAREST_PUBLISHED = 0.75;

    private final SunPath path;
    private final Dice dice;
    private final double[] extraterrestrial;
    private double lastClearness = 0.5;
    private double lean;

    /** W/m² by hour. */
    final double[] global;

    /** By day. */
    final double[] clearness;

    SyntheticSky(SunPath path, Dice dice) {
        this.path = path;
        this.dice = dice;
        global = new double[path.up.length];
        extraterrestrial = path.extraterrestrial().values();
        clearness = new double[path.up.length / HOURS_OF_A_DAY];
    }

    /**
     * Fills a month.
     *
     * @param wattHours asked for on a mean day
     * @return what a day lacks of it because the sun does not send so much
     */
    double fill(Month month, HourCalendar calendar, double wattHours) {
        int firstDay = calendar.firstHour(month) / HOURS_OF_A_DAY;
        int days = calendar.endHour(month) / HOURS_OF_A_DAY - firstDay;
        double[] sent = new double[days];
        double sentSum = 0;
        for (int day = 0; day < days; day++) {
            for (int hour = 0; hour < HOURS_OF_A_DAY; hour++) {
                sent[day] += extraterrestrial[(firstDay + day) * HOURS_OF_A_DAY + hour];
            }
            sentSum += sent[day];
        }
        double asked = sentSum > 0 ? wattHours * days / sentSum : 0;
        double mean = Math.min(CLEAREST_DAY, asked);
        double[] daily = days(mean, sent);
        for (int day = 0; day < days; day++) {
            clearness[firstDay + day] = daily[day];
            fillDay(firstDay + day, daily[day]);
        }
        return wattHours - mean * sentSum / days;
    }

    /** Of some sequences the one whose mean comes nearest, then moved to it. */
    private double[] days(double mean, double[] sent) {
        TransitionMatrix matrix = TransitionMatrix.of(mean);
        double[] best = new double[sent.length];
        double bestDistance = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TRIES; i++) {
            double[] sequence = new double[sent.length];
            double today = lastClearness;
            for (int day = 0; day < sequence.length; day++) {
                today = matrix.next(today, dice.even(), dice.even());
                sequence[day] = today;
            }
            double distance = Math.abs(BoundedMean.of(sequence, sent) - mean);
            if (distance < bestDistance) {
                bestDistance = distance;
                best = sequence;
            }
        }
        BoundedMean.reach(mean, best, sent, CLEAREST_DAY);
        lastClearness = best[best.length - 1];
        return best;
    }

    private void fillDay(int day, double dayClearness) {
        double k = Math.max(DULLEST_PUBLISHED, Math.min(CLEAREST_PUBLISHED, dayClearness));
        double lambda = -0.19 + 1.12 * k + 0.24 * Math.exp(-8 * k);
        double epsilon = 0.32 - 1.6 * (k - 0.5) * (k - 0.5);
        double kappa = 0.19 + 2.27 * k * k - 2.51 * k * k * k;
        double spreadAtZenith = 0.14 * Math.exp(-20 * (k - 0.35) * (k - 0.35));
        double spreadGrowth = 3 * (k - 0.45) * (k - 0.45) + 16 * Math.pow(k, 5);
        double persistence = 0.38 + 0.06 * Math.cos(7.4 * k - 2.5);
        int first = day * HOURS_OF_A_DAY;
        double[] hourly = new double[HOURS_OF_A_DAY];
        double[] sent = new double[HOURS_OF_A_DAY];
        for (int hour = 0; hour < HOURS_OF_A_DAY; hour++) {
            double up = path.up[first + hour];
            sent[hour] = extraterrestrial[first + hour];
            if (up > 0) {
                lean = persistence * lean + Math.sqrt(1 - persistence * persistence) * dice.normal();
                double drawn = lambda
                        + epsilon * Math.exp(-kappa / up)
                        + spreadAtZenith * Math.exp(spreadGrowth * (1 - up)) * lean;
                hourly[hour] = Math.max(0, Math.min(CLEAREST_HOUR, drawn));
            }
        }
        BoundedMean.reach(dayClearness, hourly, sent, CLEAREST_HOUR);
        for (int hour = 0; hour < HOURS_OF_A_DAY; hour++) {
            global[first + hour] = hourly[hour] * sent[hour];
        }
    }

    /** Spreads over the hours around noon what comes without a sun: the twilight at the edge of polar night. */
    void addTwilight(Month month, HourCalendar calendar, double wattHours) {
        for (int hour = calendar.firstHour(month); hour < calendar.endHour(month); hour++) {
            int ofDay = hour % HOURS_OF_A_DAY;
            global[hour] += ofDay >= 10 && ofDay < 14 ? wattHours / 4 : 0;
        }
    }
}
