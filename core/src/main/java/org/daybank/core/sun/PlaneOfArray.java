package org.daybank.core.sun;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Scalars;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.site.Site;

/** Sunshine on a tilted plane, from the months of a site. */
public final class PlaneOfArray {
    private static final List<Month> MONTHS = List.of(Month.values());

    /** How much more than its mean day a month may get: around polar night the sun returns within the month. */
    private static final Irradiation EDGE_OF_POLAR_NIGHT = Irradiation.kilowattHoursPerSquareMetre(0.25);

    private PlaneOfArray() {}

    /**
     * Finds what falls on a plane on the mean day of each month.
     *
     * <p>Clearness by the extraterrestrial irradiation of Klein's mean days; diffuse share by Erbs, Klein and Duffie;
     * spread over the day by Collares-Pereira and Rabl (global) and Liu and Jordan (diffuse), normalised; turned onto the
     * plane in 48 equal slices of the day, with the sky model of the policy. Clearness above 0.8, where nothing is
     * published, counts as diffuse light; so does whatever arrives in polar night. The site's horizon hides the sun and
     * the light around it while it stands below the skyline, and that part of the sky.
     *
     * @throws org.daybank.core.schema.InvalidInput when a month gets more than the sun sends at this latitude
     */
    public static MonthlySun monthly(Site site, Plane plane, SunPolicy policy) {
        return turn(site, meanDays(site, policy), plane, policy);
    }

    static MonthlySun turn(Site site, List<MeanDay> days, Plane plane, SunPolicy policy) {
        View view = View.of(plane, site.horizon());
        return new MonthlySun(
                site.latitude(),
                plane,
                policy,
                days.stream()
                        .map(day -> month(day, view, albedo(site, day.month)))
                        .toList());
    }

    /** What falls on a plane on each mean day, in plain numbers. */
    static double[] dailyWattHours(Site site, List<MeanDay> days, View view) {
        double[] wattHours = new double[days.size()];
        for (int i = 0; i < wattHours.length; i++) {
            MeanDay day = days.get(i);
            wattHours[i] = day.beamOn(view) + day.skyDiffuseOn(view) + day.groundOn(view, albedo(site, day.month));
        }
        return wattHours;
    }

    /**
     * What falls on a plane in the course of the mean day of a month.
     *
     * @throws org.daybank.core.schema.InvalidInput when a month gets more than the sun sends at this latitude
     */
    public static DayCourse meanDay(Site site, Plane plane, SunPolicy policy, Month month) {
        MeanDay day = meanDays(site, policy).get(month.getValue() - 1);
        return new DayCourse(
                month,
                TimeSpan.hours(day.day.dayLength().hours() / MeanDay.SLICES),
                Arrays.stream(day.wattsOn(View.of(plane, site.horizon()), albedo(site, month)))
                        .mapToObj(Irradiance::wattsPerSquareMetre)
                        .toList());
    }

    static List<MeanDay> meanDays(Site site, SunPolicy policy) {
        List<SolarDay> days = MONTHS.stream()
                .map(month -> SolarDay.on(site.latitude(), MeanDays.dayOfYear(month), policy))
                .toList();
        check(site, days);
        return MONTHS.stream()
                .map(month -> {
                    SolarDay day = days.get(month.getValue() - 1);
                    return new MeanDay(
                            month,
                            day,
                            horizontal(site.months(), month, day).wattHoursPerSquareMetre(),
                            policy.monthlySkyModel());
                })
                .toList();
    }

    private static void check(Site site, List<SolarDay> days) {
        List<Problem> problems = new ArrayList<>();
        for (Month month : MONTHS) {
            SolarDay day = days.get(month.getValue() - 1);
            Irradiation given = horizontal(site.months(), month, day);
            if (given.compareTo(day.extraterrestrial().plus(EDGE_OF_POLAR_NIGHT)) > 0) {
                problems.add(new Problem(
                        "/site/months/dailyIrradiation/" + (month.getValue() - 1),
                        ProblemCode.INCONSISTENT,
                        "dailyIrradiation of %s is %s, but the sun sends no more than %s to latitude %s in that month"
                                .formatted(
                                        Scalars.name(month),
                                        given,
                                        day.extraterrestrial().rounded(),
                                        site.latitude())));
            }
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
    }

    private static Irradiation horizontal(MonthlyClimate climate, Month month, SolarDay day) {
        if (climate.dailyIrradiation() != null) {
            return climate.dailyIrradiation().get(month.getValue() - 1);
        }
        List<Ratio> clearness = climate.clearness();
        return clearness == null ? Irradiation.ZERO : day.extraterrestrial().times(clearness.get(month.getValue() - 1));
    }

    private static double albedo(Site site, Month month) {
        return site.months().albedo().get(month.getValue() - 1).fraction();
    }

    private static SunMonth month(MeanDay day, View view, double albedo) {
        Irradiation beam = Irradiation.wattHoursPerSquareMetre(day.beamOn(view));
        Irradiation skyDiffuse = Irradiation.wattHoursPerSquareMetre(day.skyDiffuseOn(view));
        Irradiation ground = Irradiation.wattHoursPerSquareMetre(day.groundOn(view, albedo));
        return new SunMonth(
                day.month,
                day.day.declination(),
                day.day.sunsetHourAngle(),
                day.day.dayLength(),
                day.day.extraterrestrial(),
                Ratio.of(day.clearness),
                Ratio.of(day.globalWattHours > 0 ? 1 - day.beamWattHours / day.globalWattHours : 1),
                Irradiation.wattHoursPerSquareMetre(day.globalWattHours),
                beam,
                skyDiffuse,
                ground,
                beam.plus(skyDiffuse).plus(ground));
    }
}
