package org.daybank.core.sun;

import java.time.Month;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.Site;

/**
 * How the year's sunshine on a plane is spread over irradiances: what a controller cuts off when its output is full.
 *
 * <p>Each month counts with ten equally likely days whose clearness is spread around the monthly mean as published, each
 * turned onto the plane like a mean day.
 */
public final class IrradianceDistribution {
    private static final int DAYS = 10;
    private static final double BIN = 5;
    private static final int BINS = 400;

    /** Time and irradiation at or above the lower end of each bin, in arbitrary but equal units. */
    private final double[] timeAbove = new double[BINS + 1];

    private final double[] irradiationAbove = new double[BINS + 1];

    private IrradianceDistribution() {}

    /** The distribution on a plane at a site, over a whole year. */
    public static IrradianceDistribution of(Site site, Plane plane, SunPolicy policy) {
        IrradianceDistribution distribution = new IrradianceDistribution();
        View view = View.of(plane, site.horizon());
        for (MeanDay mean : PlaneOfArray.meanDays(site, policy)) {
            double albedo =
                    site.months().albedo().get(mean.month.getValue() - 1).fraction();
            double extraterrestrial = mean.day.extraterrestrial().wattHoursPerSquareMetre();
            double slice = mean.day.dayLength().hours() / MeanDay.SLICES;
            for (double clearness : ClearnessDistribution.classes(mean.clearness, DAYS)) {
                MeanDay day = new MeanDay(mean.month, mean.day, clearness * extraterrestrial, policy.monthlySkyModel());
                for (double watts : day.wattsOn(view, albedo)) {
                    distribution.add(watts, slice * daysOf(mean.month) / DAYS);
                }
            }
        }
        distribution.accumulate();
        return distribution;
    }

    private static double daysOf(Month month) {
        return month == Month.FEBRUARY ? 28.25 : month.maxLength();
    }

    private void add(double watts, double time) {
        int bin = (int) Math.min(BINS - 1, watts / BIN);
        timeAbove[bin] += time;
        irradiationAbove[bin] += watts * time;
    }

    private void accumulate() {
        for (int bin = BINS - 1; bin >= 0; bin--) {
            timeAbove[bin] += timeAbove[bin + 1];
            irradiationAbove[bin] += irradiationAbove[bin + 1];
        }
    }

    /** Share of the year's irradiation that lies above an irradiance: {@code Σ max(0, G − limit)·t / Σ G·t}. */
    public Ratio shareAbove(Irradiance limit) {
        if (irradiationAbove[0] == 0) {
            return Ratio.ZERO;
        }
        int bin = (int) Math.min(BINS, Math.ceil(limit.wattsPerSquareMetre() / BIN));
        double above = irradiationAbove[bin] - limit.wattsPerSquareMetre() * timeAbove[bin];
        return Ratio.of(Math.max(0, above) / irradiationAbove[0]);
    }
}
