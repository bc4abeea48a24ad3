package org.daybank.core.sun;

import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Site;

/**
 * The tilt that serves a purpose best, for a given azimuth ({@link Plane#equatorward(Latitude)} where none is given), to
 * a hundredth of a degree.
 */
public final class BestTilt {
    private static final Set<Month> WHOLE_YEAR = EnumSet.allOf(Month.class);
    private static final double UPRIGHT = 90;
    private static final double COARSE_STEP = 5;
    private static final double FINE_ENOUGH = 0.01;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private BestTilt() {}

    /**
     * The tilt that gathers the most in a year.
     *
     * @throws org.daybank.core.schema.InvalidInput when a month gets more than the sun sends at this latitude
     */
    public static MonthlySun forYear(Site site, Angle azimuth, SunPolicy policy) {
        return search(site, azimuth, policy, days -> gathered(days, WHOLE_YEAR));
    }

    /**
     * The tilt with which the hardest month, the one that asks the largest array, is as easy as it can be. Months in which
     * nothing is needed or no sun shines at all do not count.
     *
     * @param dailyNeed energy needed on a mean day of each month, or anything proportional to it; twelve from January
     * @throws org.daybank.core.schema.InvalidInput when there are not twelve needs, or a month gets more than the sun sends
     *     at this latitude
     */
    public static MonthlySun forNeed(Site site, Angle azimuth, SunPolicy policy, List<Energy> dailyNeed) {
        check(dailyNeed);
        return search(site, azimuth, policy, days -> -hardestMonth(days, dailyNeed, WHOLE_YEAR));
    }

    /**
     * The two tilts, changed in April and October, that gather the most in a year.
     *
     * @throws org.daybank.core.schema.InvalidInput when a month gets more than the sun sends at this latitude
     */
    public static SeasonalTilt forYearTwice(Site site, Angle azimuth, SunPolicy policy) {
        return new SeasonalTilt(
                search(site, azimuth, policy, days -> gathered(days, SeasonalTilt.APRIL_TO_SEPTEMBER)),
                search(site, azimuth, policy, days -> gathered(days, SeasonalTilt.OCTOBER_TO_MARCH)));
    }

    /**
     * The two tilts, changed in April and October, each of which makes the hardest month of its half year as easy as it can
     * be.
     *
     * @param dailyNeed energy needed on a mean day of each month, or anything proportional to it; twelve from January
     * @throws org.daybank.core.schema.InvalidInput when there are not twelve needs, or a month gets more than the sun sends
     *     at this latitude
     */
    public static SeasonalTilt forNeedTwice(Site site, Angle azimuth, SunPolicy policy, List<Energy> dailyNeed) {
        check(dailyNeed);
        return new SeasonalTilt(
                search(site, azimuth, policy, days -> -hardestMonth(days, dailyNeed, SeasonalTilt.APRIL_TO_SEPTEMBER)),
                search(site, azimuth, policy, days -> -hardestMonth(days, dailyNeed, SeasonalTilt.OCTOBER_TO_MARCH)));
    }

    private static void check(List<Energy> dailyNeed) {
        new Validation()
                .required("dailyNeed", dailyNeed)
                .length("dailyNeed", dailyNeed, Month.values().length)
                .eachWithin("dailyNeed", dailyNeed, Energy.ZERO, Energy.kilowattHours(1e6))
                .done();
    }

    private static double gathered(double[] dailyWattHours, Set<Month> season) {
        double sum = 0;
        for (Month month : season) {
            sum += dailyWattHours[month.getValue() - 1] * month.minLength();
        }
        return sum;
    }

    private static double hardestMonth(double[] dailyWattHours, List<Energy> dailyNeed, Set<Month> season) {
        double hardest = 0;
        for (Month month : season) {
            double sun = dailyWattHours[month.getValue() - 1];
            if (sun > 0) {
                hardest = Math.max(hardest, dailyNeed.get(month.getValue() - 1).wattHours() / sun);
            }
        }
        return hardest;
    }

    private static MonthlySun search(Site site, Angle azimuth, SunPolicy policy, ToDoubleFunction<double[]> goodness) {
        List<MeanDay> days = PlaneOfArray.meanDays(site, policy);
        double best = bestDegrees(tilt -> {
            View view = View.of(new Plane(Angle.degrees(tilt), azimuth), site.horizon());
            return goodness.applyAsDouble(PlaneOfArray.dailyWattHours(site, days, view));
        });
        return PlaneOfArray.turn(site, days, new Plane(Angle.degrees(best), azimuth), policy);
    }

    /** Coarse steps first, for there may be more than one summit; then the golden section around the best of them. */
    private static double bestDegrees(DoubleUnaryOperator goodness) {
        double best = 0;
        double bestGoodness = goodness.applyAsDouble(best);
        for (double tilt = COARSE_STEP; tilt <= UPRIGHT; tilt += COARSE_STEP) {
            double here = goodness.applyAsDouble(tilt);
            if (here > bestGoodness) {
                best = tilt;
                bestGoodness = here;
            }
        }
        double low = Math.max(0, best - COARSE_STEP);
        double high = Math.min(UPRIGHT, best + COARSE_STEP);
        while (high - low > FINE_ENOUGH) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (goodness.applyAsDouble(left) >= goodness.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        double refined = (low + high) / 2;
        return goodness.applyAsDouble(refined) > bestGoodness ? refined : best;
    }
}
