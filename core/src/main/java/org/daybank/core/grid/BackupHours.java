package org.daybank.core.grid;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Working;

/**
 * How long a bank carries the essential loads when the grid is gone: at their mean, at their worst hour, and with an outage
 * that begins at each hour of a year. No time is longer than the longest outage that is followed; the year follows itself.
 *
 * @param need what the bank holds
 * @param meanLoad at the bank, over the year
 * @param worstHourLoad at the bank, in the hour that asks most
 * @param atMeanLoad the time at the mean
 * @param atWorstHour the time if every hour were the worst
 * @param mean of the times from each hour of the year
 * @param shortest of them
 * @param shortestFrom the hour from which it is shortest, the first of several
 * @param carriedThroughout share of the starts from which the longest outage is carried
 */
public record BackupHours(
        @NotRepeated BackupNeed need,
        Power meanLoad,
        Power worstHourLoad,
        TimeSpan atMeanLoad,
        TimeSpan atWorstHour,
        TimeSpan mean,
        TimeSpan shortest,
        String shortestFrom,
        Ratio carriedThroughout) {
    /**
     * Begins an outage at every hour of a year.
     *
     * @param need what the bank holds
     * @param hours what the array brings to the bank and what the essential loads draw from it; the array only counts where
     *     the need says so
     */
    public static BackupHours of(BackupNeed need, GridHours hours) {
        double[] draw = hours.load().values();
        double[] sun = need.sunCounts() ? hours.array().values() : new double[draw.length];
        double sum = 0;
        double shortest = Double.POSITIVE_INFINITY;
        int from = 0;
        int throughout = 0;
        double longest = need.longest().hours();
        for (int start = 0; start < draw.length; start++) {
            double lasted = lasts(need, draw, sun, start);
            sum += lasted;
            throughout += lasted >= longest ? 1 : 0;
            if (lasted < shortest) {
                shortest = lasted;
                from = start;
            }
        }
        Power mean = Power.watts(hours.load().mean(0, draw.length));
        Power worst = Power.watts(hours.load().most());
        return new BackupHours(
                need,
                mean,
                worst,
                steady(need, mean),
                steady(need, worst),
                TimeSpan.hours(sum / draw.length),
                TimeSpan.hours(shortest),
                hours.calendar().words(from),
                Ratio.of(throughout / (double) draw.length));
    }

    private static TimeSpan steady(BackupNeed need, Power load) {
        double held = held(need).wattHours();
        return held < load.watts() * need.longest().hours() ? TimeSpan.hours(held / load.watts()) : need.longest();
    }

    private static Energy held(BackupNeed need) {
        return need.usable().times(need.startsWith());
    }

    private static double lasts(BackupNeed need, double[] draw, double[] sun, int start) {
        double full = need.usable().wattHours();
        double efficiency = need.chargeEfficiency().fraction();
        double longest = need.longest().hours();
        double held = held(need).wattHours();
        int hour = start;
        for (double gone = 0; gone < longest; gone++) {
            double lacking = draw[hour] - sun[hour];
            if (lacking > held) {
                return Math.min(longest, gone + held / lacking);
            }
            held = lacking > 0 ? held - lacking : Math.min(full, held - lacking * efficiency);
            hour = hour + 1 == draw.length ? 0 : hour + 1;
        }
        return longest;
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        return Working.builder()
                .step(
                        "backup at the mean load",
                        "t = E · s / P_mean",
                        "no longer than the longest outage followed",
                        atMeanLoad,
                        "%s · %s / %s",
                        need.usable(),
                        need.startsWith(),
                        meanLoad)
                .step(
                        "backup at the worst hour's load",
                        "t = E · s / P_max",
                        "no longer than the longest outage followed",
                        atWorstHour,
                        "%s · %s / %s",
                        need.usable(),
                        need.startsWith(),
                        worstHourLoad)
                .build();
    }
}
