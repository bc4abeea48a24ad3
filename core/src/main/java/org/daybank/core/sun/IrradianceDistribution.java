package org.daybank.core.sun;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;

/**
 * How the sunshine on a plane is spread over irradiances, month by month: what a module makes of it, and what a controller
 * cuts off when its output is full.
 *
 * <p>From the months of a site, each month counts with ten equally likely days whose clearness is spread around the monthly
 * mean as published (Bendt, Collares-Pereira and Rabl 1981), each turned onto the plane like a mean day; their sum is held to
 * that of the mean day. From a weather year, every hour counts as it is. Unchangeable.
 */
public final class IrradianceDistribution {
    private static final int DAYS = 10;
    private static final int MONTHS = 12;
    private static final double BIN = 5;
    private static final int BINS = 400;

    /** Bins that make up one class of {@link #in}: 50 W/m² wide, within which a module's power is all but a straight line. */
    private static final int BINS_OF_A_CLASS = 10;

    /** By month and bin, for the mean day: hours, and their sums of irradiance and of irradiance times air temperature. */
    private final double[][] hours = new double[MONTHS][BINS];

    private final double[][] wattHours = new double[MONTHS][BINS];
    private final double[][] airWattHours = new double[MONTHS][BINS];

    /** Days of each month. */
    private final double[] days = new double[MONTHS];

    /** Over the year, at or above the lower end of each bin. */
    private final double[] hoursAbove = new double[BINS + 1];

    private final double[] wattHoursAbove = new double[BINS + 1];
    private final List<List<SunClass>> classes = new ArrayList<>();

    private IrradianceDistribution() {}

    /** The distribution on a plane, from the months of a site. */
    public static IrradianceDistribution of(Site site, Plane plane, SunPolicy policy) {
        IrradianceDistribution distribution = new IrradianceDistribution();
        View view = View.of(plane, site.horizon());
        for (MeanDay mean : PlaneOfArray.meanDays(site, policy)) {
            int month = mean.month.getValue() - 1;
            double albedo = site.months().albedo().get(month).fraction();
            double air = site.months()
                    .meanAir()
                    .get(month)
                    .plus(policy.daytimeOverMeanAir())
                    .celsius();
            double slice = mean.day.dayLength().hours() / MeanDay.SLICES;
            List<double[]> likely = likelyDays(mean, view, albedo, policy);
            double sum = 0;
            for (double[] day : likely) {
                sum += sum(day) * slice / DAYS;
            }
            double published = sum(mean.wattsOn(view, albedo)) * slice;
            double scale = sum > 0 ? published / sum : 0;
            for (double[] day : likely) {
                for (double watts : day) {
                    distribution.add(month, watts * scale, slice / DAYS, air);
                }
            }
            distribution.days[month] = MonthlyClimate.daysIn(mean.month);
        }
        return distribution.completed();
    }

    private static List<double[]> likelyDays(MeanDay mean, View view, double albedo, SunPolicy policy) {
        double extraterrestrial = mean.day.extraterrestrial().wattHoursPerSquareMetre();
        List<double[]> likely = new ArrayList<>();
        for (double clearness : ClearnessDistribution.classes(mean.clearness, DAYS)) {
            likely.add(new MeanDay(mean.month, mean.day, clearness * extraterrestrial, policy.monthlySkyModel())
                    .wattsOn(view, albedo));
        }
        return likely;
    }

    /**
     * The distribution of a weather year on a plane: what gets through the cover in each hour.
     *
     * @param sun the weather year turned onto the plane
     * @param weather the year, with the temperature of its air
     * @throws org.daybank.core.schema.InvalidInput when the year has no air temperature
     */
    public static IrradianceDistribution of(HourlySun sun, WeatherYear weather) {
        HourlySeries air = Objects.requireNonNull(weather.air(), "the weather year has no air temperature");
        HourCalendar calendar = sun.calendar();
        IrradianceDistribution distribution = new IrradianceDistribution();
        for (Month month : Month.values()) {
            int from = calendar.firstHour(month);
            int to = calendar.endHour(month);
            double monthDays = (to - from) / 24.0;
            for (int hour = from; hour < to; hour++) {
                distribution.add(month.getValue() - 1, sun.effective().at(hour), 1 / monthDays, air.at(hour));
            }
            distribution.days[month.getValue() - 1] = monthDays;
        }
        return distribution.completed();
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private void add(int month, double watts, double perDay, double airCelsius) {
        if (watts > 0) {
            int bin = (int) Math.min(BINS - 1, watts / BIN);
            hours[month][bin] += perDay;
            wattHours[month][bin] += watts * perDay;
            airWattHours[month][bin] += airCelsius * watts * perDay;
        }
    }

    private IrradianceDistribution completed() {
        for (int bin = BINS - 1; bin >= 0; bin--) {
            hoursAbove[bin] = hoursAbove[bin + 1];
            wattHoursAbove[bin] = wattHoursAbove[bin + 1];
            for (int month = 0; month < MONTHS; month++) {
                hoursAbove[bin] += hours[month][bin] * days[month];
                wattHoursAbove[bin] += wattHours[month][bin] * days[month];
            }
        }
        for (int month = 0; month < MONTHS; month++) {
            classes.add(classes(month));
        }
        return this;
    }

    private List<SunClass> classes(int month) {
        List<SunClass> found = new ArrayList<>();
        for (int from = 0; from < BINS; from += BINS_OF_A_CLASS) {
            double time = 0;
            double energy = 0;
            double air = 0;
            for (int bin = from; bin < from + BINS_OF_A_CLASS; bin++) {
                time += hours[month][bin];
                energy += wattHours[month][bin];
                air += airWattHours[month][bin];
            }
            if (energy > 0) {
                found.add(new SunClass(
                        Irradiance.wattsPerSquareMetre(energy / time),
                        TimeSpan.hours(time),
                        Temperature.celsius(air / energy)));
            }
        }
        return List.copyOf(found);
    }

    /** The sunshine of a month's mean day, from the dimmest class to the brightest; dark hours are in none. */
    public List<SunClass> in(Month month) {
        return classes.get(month.getValue() - 1);
    }

    /** Share of the year's irradiation that lies above an irradiance: {@code Σ max(0, G − limit)·t / Σ G·t}. */
    public Ratio shareAbove(Irradiance limit) {
        if (wattHoursAbove[0] == 0) {
            return Ratio.ZERO;
        }
        int bin = (int) Math.min(BINS, Math.ceil(limit.wattsPerSquareMetre() / BIN));
        double above = wattHoursAbove[bin] - limit.wattsPerSquareMetre() * hoursAbove[bin];
        return Ratio.of(Math.max(0, above) / wattHoursAbove[0]);
    }
}
