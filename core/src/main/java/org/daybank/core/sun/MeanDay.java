package org.daybank.core.sun;

import java.time.Month;

/**
 * The mean day of a month in equal slices from sunrise to sunset, so that the shortest polar day is told as finely as the
 * longest: what falls on the horizontal in each slice, and where the sun stands.
 *
 * <p>The global irradiation is spread by Collares-Pereira and Rabl (Solar Energy 22 (1979) 155–164), the diffuse by Liu and
 * Jordan (Solar Energy 4 (1960) 1–19), both normalised to the day's sum. Where the two would leave less than no beam (near
 * sunrise and sunset) there is none, and the rest of the beam is scaled to its sum for the day.
 */
final class MeanDay {
    static final int SLICES = 48;

    final Month month;
    final SolarDay day;

    /** Extraterrestrial share that arrives; zero when there is no sun. */
    final double clearness;

    /** Sums of the day on the horizontal. */
    final double globalWattHours;

    final double beamWattHours;
    private double circumsolarWattHours;

    /** Toward the sun at the middle of each slice: up, north and east. */
    private final double[] up = new double[SLICES];

    private final double[] north = new double[SLICES];
    private final double[] east = new double[SLICES];

    /** What falls in each slice on the horizontal. */
    private final double[] global = new double[SLICES];

    /** What falls in each slice on a plane that faces the sun: the beam, and the diffuse light that comes from around it. */
    private final double[] beamNormal = new double[SLICES];

    private final double[] circumsolarNormal = new double[SLICES];

    MeanDay(Month month, SolarDay day, double globalWattHours, SkyModel model) {
        this.month = month;
        this.day = day;
        this.globalWattHours = globalWattHours;
        double extraterrestrial = day.extraterrestrial().wattHoursPerSquareMetre();
        double sunset = day.sunsetHourAngle().radians();
        clearness = extraterrestrial > 0 ? globalWattHours / extraterrestrial : 0;
        double known = Math.min(clearness, Erbs.CLEAREST_MONTH);
        beamWattHours = (1 - Erbs.monthly(known, sunset)) * known * extraterrestrial;
        if (extraterrestrial > 0) {
            spread(placeSun(sunset));
            if (model == SkyModel.HAY_DAVIES) {
                partCircumsolar(extraterrestrial);
            }
        }
    }

    /** Places the sun and gives the unnormalised hourly shares of the global irradiation. */
    private double[] placeSun(double sunset) {
        double sinPhi = Math.sin(day.latitude().radians());
        double cosPhi = Math.cos(day.latitude().radians());
        double sinDelta = day.declination().sine();
        double cosDelta = day.declination().cosine();
        double a = 0.409 + 0.5016 * Math.sin(sunset - Math.PI / 3);
        double b = 0.6609 - 0.4767 * Math.sin(sunset - Math.PI / 3);
        double[] shares = new double[SLICES];
        for (int i = 0; i < SLICES / 2; i++) {
            double hourAngle = sunset * ((2 * i + 1.0) / SLICES - 1);
            double cosHour = Math.cos(hourAngle);
            // cos ω − cos ω_s as a product, which keeps its digits on the shortest days
            up[i] = sunset < Math.PI
                    ? 2 * cosPhi * cosDelta * Math.sin((sunset + hourAngle) / 2) * Math.sin((sunset - hourAngle) / 2)
                    : Math.max(0, sinPhi * sinDelta + cosPhi * cosDelta * cosHour);
            north[i] = cosPhi * sinDelta - sinPhi * cosDelta * cosHour;
            east[i] = -cosDelta * Math.sin(hourAngle);
            shares[i] = (a + b * cosHour) * up[i];
            mirrorInAfternoon(i, shares);
        }
        return shares;
    }

    private void mirrorInAfternoon(int morning, double[] shares) {
        int afternoon = SLICES - 1 - morning;
        up[afternoon] = up[morning];
        north[afternoon] = north[morning];
        east[afternoon] = -east[morning];
        shares[afternoon] = shares[morning];
    }

    private void spread(double[] globalShares) {
        double diffuseEach = (globalWattHours - beamWattHours) / sum(up);
        double globalEach = globalWattHours / sum(globalShares);
        double[] shape = new double[SLICES];
        for (int i = 0; i < SLICES; i++) {
            global[i] = globalEach * globalShares[i];
            shape[i] = Math.max(0, global[i] - diffuseEach * up[i]);
        }
        double shapeSum = sum(shape);
        double scale = shapeSum > 0 ? beamWattHours / shapeSum : 0;
        for (int i = 0; i < SLICES; i++) {
            beamNormal[i] = up[i] > 0 ? scale * shape[i] / up[i] : 0;
        }
    }

    private void partCircumsolar(double extraterrestrial) {
        double extraterrestrialNormal = extraterrestrial / sum(up);
        double onHorizontal = 0;
        for (int i = 0; i < SLICES; i++) {
            double anisotropy = Math.min(1, beamNormal[i] / extraterrestrialNormal);
            double circumsolar = anisotropy * (global[i] - beamNormal[i] * up[i]);
            circumsolarNormal[i] = up[i] > 0 ? circumsolar / up[i] : 0;
            onHorizontal += circumsolar;
        }
        circumsolarWattHours = onHorizontal;
    }

    private static double sum(double[] slices) {
        double sum = 0;
        for (double slice : slices) {
            sum += slice;
        }
        return sum;
    }

    /** The beam on a plane. */
    double beamOn(View view) {
        return turned(beamNormal, view);
    }

    /** The sky's diffuse light on a plane: what comes from around the sun, and the rest equally from everywhere. */
    double skyDiffuseOn(View view) {
        return turned(circumsolarNormal, view)
                + Math.max(0, globalWattHours - beamWattHours - circumsolarWattHours) * view.skyShare();
    }

    double groundOn(View view, double albedo) {
        return globalWattHours * albedo * view.groundShare();
    }

    private double turned(double[] normal, View view) {
        double sum = 0;
        for (int i = 0; i < SLICES; i++) {
            sum += normal[i] * view.cosIncidence(up[i], north[i], east[i]);
        }
        return sum;
    }

    /** What falls on a plane in each slice, in W/m². */
    double[] wattsOn(View view, double albedo) {
        double hours = day.dayLength().hours() / SLICES;
        double[] watts = new double[SLICES];
        for (int i = 0; i < SLICES && hours > 0; i++) {
            double fromTheSun = beamNormal[i] + circumsolarNormal[i];
            watts[i] = (fromTheSun * view.cosIncidence(up[i], north[i], east[i])
                            + (global[i] - fromTheSun * up[i]) * view.skyShare()
                            + global[i] * albedo * view.groundShare())
                    / hours;
        }
        return watts;
    }
}
