package org.daybank.core.sun;

import java.time.Month;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/** Turns the light of every hour onto a plane. */
final class Transposition {
    /** The sun's height below which the light around it is no longer multiplied: Perez' eq. 9 names 85° of zenith. */
    private static final double LOWEST_PEREZ = Math.cos(Math.toRadians(85));

    private static final double LOWEST_HAY_DAVIES = Math.cos(Math.toRadians(89));
    private static final int HOURS_OF_A_DAY = 24;

    private final HourlySky sky;
    private final Exposure exposure;
    private final View view;
    private final double sineTilt;
    private final double[] cosIncidence;
    private final double[] beam;
    private final double[] circumsolar;
    private final double[] evenSky;
    private final double[] ground;

    Transposition(HourlySky sky, Exposure exposure) {
        int hours = sky.weather.hours();
        this.sky = sky;
        this.exposure = exposure;
        view = View.of(exposure.plane(), exposure.horizon());
        sineTilt = exposure.plane().tilt().sine();
        cosIncidence = new double[hours];
        beam = new double[hours];
        circumsolar = new double[hours];
        evenSky = new double[hours];
        ground = new double[hours];
    }

    HourlySun turn() {
        turnBeam();
        switch (sky.policy.hourlySkyModel()) {
            case ISOTROPIC -> turnIsotropic();
            case HAY_DAVIES -> turnHayDavies();
            case PEREZ -> turnPerez();
        }
        turnGround();
        return result();
    }

    private void turnBeam() {
        SunPath path = sky.path;
        double[] direct = sky.light.direct;
        for (int hour = 0; hour < beam.length; hour++) {
            if (path.up[hour] > 0) {
                cosIncidence[hour] = view.cosIncidence(path.up[hour], path.north[hour], path.east[hour]);
                beam[hour] = direct[hour] * cosIncidence[hour];
            }
        }
    }

    private void turnIsotropic() {
        double[] diffuse = sky.light.diffuse;
        for (int hour = 0; hour < diffuse.length; hour++) {
            evenSky[hour] = diffuse[hour] * view.skyShare();
        }
    }

    /** J. E. Hay, J. A. Davies 1980: as much of the diffuse light comes from around the sun as the beam is strong. */
    private void turnHayDavies() {
        double[] diffuse = sky.light.diffuse;
        double[] direct = sky.light.direct;
        double[] up = sky.path.up;
        for (int hour = 0; hour < diffuse.length; hour++) {
            double anisotropy = up[hour] > 0
                    ? Math.min(1, direct[hour] / sky.path.normalExtraterrestrial[hour / HOURS_OF_A_DAY])
                    : 0;
            evenSky[hour] = diffuse[hour] * (1 - anisotropy) * view.skyShare();
            circumsolar[hour] = diffuse[hour] * anisotropy * cosIncidence[hour] / Math.max(LOWEST_HAY_DAVIES, up[hour]);
        }
    }

    private void turnPerez() {
        double[] diffuse = sky.light.diffuse;
        double[] up = sky.path.up;
        for (int hour = 0; hour < diffuse.length; hour++) {
            if (diffuse[hour] > 0) {
                if (up[hour] > 0) {
                    turnPerez(hour, PerezSky.zenith(Math.min(1, up[hour])));
                } else {
                    evenSky[hour] = diffuse[hour] * view.skyShare();
                }
            }
        }
    }

    private void turnPerez(int hour, double zenith) {
        double diffuse = sky.light.diffuse[hour];
        double brightness = PerezSky.airMass(zenith, sky.path.up[hour])
                * diffuse
                / sky.path.normalExtraterrestrial[hour / HOURS_OF_A_DAY];
        int bin = PerezSky.bin(PerezSky.clearness(diffuse, sky.light.direct[hour], zenith));
        double aroundSun = PerezSky.circumsolar(bin, brightness, zenith);
        double alongHorizon = PerezSky.horizon(bin, brightness, zenith);
        circumsolar[hour] = diffuse * aroundSun * cosIncidence[hour] / Math.max(LOWEST_PEREZ, sky.path.up[hour]);
        evenSky[hour] = Math.max(0, diffuse * ((1 - aroundSun) * view.skyShare() + alongHorizon * sineTilt));
    }

    private void turnGround() {
        HourCalendar calendar = sky.weather.calendar();
        for (Month month : Month.values()) {
            double share = exposure.albedo().get(month.getValue() - 1).fraction() * view.groundShare();
            for (int hour = calendar.firstHour(month); hour < calendar.endHour(month); hour++) {
                ground[hour] = sky.light.global[hour] * share;
            }
        }
    }

    private HourlySun result() {
        Cover cover = sky.policy.cover();
        double tilt = exposure.plane().tilt().degrees();
        double skyAdmitted = cover.skyAdmitted(tilt);
        double groundAdmitted = cover.groundAdmitted(tilt);
        double[] skyDiffuse = new double[beam.length];
        double[] planeOfArray = new double[beam.length];
        double[] effective = new double[beam.length];
        for (int hour = 0; hour < beam.length; hour++) {
            double fromTheSun = beam[hour] + circumsolar[hour];
            skyDiffuse[hour] = circumsolar[hour] + evenSky[hour];
            planeOfArray[hour] = fromTheSun + evenSky[hour] + ground[hour];
            effective[hour] = (fromTheSun > 0 ? fromTheSun * cover.admitted(cosIncidence[hour]) : 0)
                    + evenSky[hour] * skyAdmitted
                    + ground[hour] * groundAdmitted;
        }
        return new HourlySun(
                exposure,
                sky.policy,
                sky.weather.calendar(),
                HourlySeries.wattsPerSquareMetre(beam),
                HourlySeries.wattsPerSquareMetre(skyDiffuse),
                HourlySeries.wattsPerSquareMetre(ground),
                HourlySeries.wattsPerSquareMetre(planeOfArray),
                HourlySeries.wattsPerSquareMetre(effective));
    }
}
