package org.daybank.core.sun;

import java.time.Month;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.Site;

/**
 * Air temperature hour by hour, made up from twelve means: days wander around the season, each leaning on the one before; the
 * clearer the day, the wider its swing (G. H. Hargreaves, Z. A. Samani 1982, in FAO Irrigation and Drainage Paper 56, eq.
 * 50: K = k · √(T_max − T_min)); its course is the one of D. G. Erbs, S. A. Klein, W. A. Beckman 1983. Each month then gets
 * its mean, and no hour passes the records of the site.
 */
final class SyntheticAir {
    private static final int HOURS_OF_A_DAY = 24;
    private static final double LEAST_SWING = 1;
    private static final double MOST_SWING = 25;

    private final Site site;
    private final HourCalendar calendar;
    private final SyntheticPolicy policy;

    SyntheticAir(Site site, HourCalendar calendar, SyntheticPolicy policy) {
        this.site = site;
        this.calendar = calendar;
        this.policy = policy;
    }

    /** °C by hour. */
    double[] celsius(double[] dailyClearness, Dice dice) {
        int days = dailyClearness.length;
        double[] means = new double[days];
        double[] swings = new double[days];
        double persistence = policy.airPersistence().fraction();
        double wander = dice.normal();
        for (int day = 0; day < days; day++) {
            wander = persistence * wander + Math.sqrt(1 - persistence * persistence) * dice.normal();
            means[day] = season(day) + policy.airSpread().kelvins() * wander;
            double root = dailyClearness[day] / policy.swingCoefficient().fraction();
            swings[day] = Math.max(LEAST_SWING, Math.min(MOST_SWING, root * root));
        }
        double[] air = new double[calendar.hours()];
        for (int hour = 0; hour < air.length; hour++) {
            air[hour] = between(means, hour) + between(swings, hour) * course(hour % HOURS_OF_A_DAY);
        }
        for (Month month : Month.values()) {
            settle(air, month);
        }
        return air;
    }

    /** The season's temperature: straight from the middle of one month to the middle of the next. */
    private double season(int day) {
        Month month = calendar.date(day).getMonth();
        int first = calendar.firstHour(month) / HOURS_OF_A_DAY;
        double length = calendar.endHour(month) / HOURS_OF_A_DAY - first;
        double fromMiddle = (day + 0.5 - first) / length - 0.5;
        double neighbour = mean(fromMiddle < 0 ? month.minus(1) : month.plus(1)).celsius();
        return mean(month).celsius()
                + Math.abs(fromMiddle) * (neighbour - mean(month).celsius());
    }

    private Temperature mean(Month month) {
        return site.months().meanAir().get(month.getValue() - 1);
    }

    /** The daily figure at an hour: straight from noon to noon. */
    private static double between(double[] daily, int hour) {
        double position = (hour + 0.5) / HOURS_OF_A_DAY - 0.5;
        int before = (int) Math.floor(position);
        double along = position - before;
        return (1 - along) * daily[Math.max(0, before)] + along * daily[Math.min(daily.length - 1, before + 1)];
    }

    /** Share of the swing above the day's mean; Erbs, Klein and Beckman count the hours from one o'clock. */
    private static double course(int hour) {
        double t = 2 * Math.PI * (hour + 0.5 - 1) / HOURS_OF_A_DAY;
        return 0.4632 * Math.cos(t - 3.805)
                + 0.0984 * Math.cos(2 * t - 0.360)
                + 0.0168 * Math.cos(3 * t - 0.822)
                + 0.0138 * Math.cos(4 * t - 3.513);
    }

    /** Shifts a month to its mean and draws it in between the records. */
    private void settle(double[] air, Month month) {
        int first = calendar.firstHour(month);
        int end = calendar.endHour(month);
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int hour = first; hour < end; hour++) {
            sum += air[hour];
            least = Math.min(least, air[hour]);
            most = Math.max(most, air[hour]);
        }
        double made = sum / (end - first);
        double asked = mean(month).celsius();
        double room = Math.min(
                1,
                Math.min(
                        (site.resolved().recordHigh().celsius() - asked) / (most - made),
                        (asked - site.recordLow().celsius()) / (made - least)));
        for (int hour = first; hour < end; hour++) {
            air[hour] = asked + room * (air[hour] - made);
        }
    }
}
