package org.daybank.core.opinion;

import static java.lang.Math.PI;
import static java.lang.Math.acos;
import static java.lang.Math.cos;
import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

/**
 * Sunshine on a plane from monthly means: Klein 1977 mean days, Cooper's declination as Klein uses it, Erbs and others
 * 1982 for the monthly diffuse share, Collares-Pereira and Rabl 1979 and Liu and Jordan 1960 for the shares of the
 * hours, Hay and Davies 1980 for the tilt, in 24 hours with the sun at mid-hour.
 */
final class SunOpinion {
    private static final int[] MEAN_DAYS = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};

    /** One month's mean day; irradiations in Wh/m², hourly irradiances on the plane in W/m². */
    static final class Month {
        double declination;
        double sunset;
        double extraterrestrial;
        double clearness;
        double diffuseFraction;
        double beam;
        double sky;
        double ground;
        final double[] plane = new double[24];

        double planeOfArray() {
            return beam + sky + ground;
        }

        /** Share of an hour of the day that is dark, the sun being highest at twelve. */
        double dark(int hour) {
            double rise = 12 - sunset * 12 / PI;
            double set = 12 + sunset * 12 / PI;
            return 1 - max(0, min(hour + 1, set) - max(hour, rise));
        }
    }

    static Month[] months(Ask ask) {
        Month[] all = new Month[12];
        for (int m = 0; m < 12; m++) {
            all[m] = month(ask, m);
        }
        return all;
    }

    private static Month month(Ask ask, int m) {
        int n = MEAN_DAYS[m];
        double phi = toRadians(ask.latitude);
        double delta = toRadians(23.45) * sin(toRadians(360.0 * (284 + n) / 365));
        double distance = 1 + 0.033 * cos(toRadians(360.0 * n / 365));
        double ws = acos(max(-1, min(1, -Math.tan(phi) * Math.tan(delta))));
        Month month = new Month();
        month.declination = delta;
        month.sunset = ws;
        month.extraterrestrial =
                24 / PI * ask.solarConstant * distance * (cos(phi) * cos(delta) * sin(ws) + ws * sin(phi) * sin(delta));
        double horizontal = ask.horizontalWattHours[m];
        month.clearness = horizontal / month.extraterrestrial;
        month.diffuseFraction = erbs(month.clearness, ws);

        double totals = 0;
        double shapes = 0;
        for (int h = 0; h < 24; h++) {
            totals += total(angle(h), ws);
            shapes += shape(angle(h), ws);
        }
        double beta = toRadians(ask.tilt);
        double gamma = toRadians(ask.azimuth);
        for (int h = 0; h < 24; h++) {
            double w = angle(h);
            if (shape(w, ws) <= 0) {
                continue;
            }
            double east = -cos(delta) * sin(w);
            double north = cos(phi) * sin(delta) - sin(phi) * cos(delta) * cos(w);
            double up = sin(phi) * sin(delta) + cos(phi) * cos(delta) * cos(w);
            double incidence = east * sin(beta) * sin(gamma) + north * sin(beta) * cos(gamma) + up * cos(beta);
            double turned = max(0, incidence) / up;
            double global = horizontal * total(w, ws) / totals;
            double diffuse = min(global, horizontal * month.diffuseFraction * shape(w, ws) / shapes);
            double outside = month.extraterrestrial * shape(w, ws) / shapes;
            double around = ask.isotropic ? 0 : (global - diffuse) / outside;
            double beam = (global - diffuse) * turned;
            double sky = diffuse * (around * turned + (1 - around) * (1 + cos(beta)) / 2);
            double ground = global * ask.albedo[m] * (1 - cos(beta)) / 2;
            month.beam += beam;
            month.sky += sky;
            month.ground += ground;
            month.plane[h] = beam + sky + ground;
        }
        return month;
    }

    private static double angle(int hour) {
        return toRadians((hour + 0.5 - 12) * 15);
    }

    /** Liu and Jordan's share of the diffuse, but for a factor. */
    private static double shape(double w, double ws) {
        return max(0, cos(w) - cos(ws));
    }

    /** Collares-Pereira and Rabl's share of the global, but for a factor. */
    private static double total(double w, double ws) {
        double a = 0.409 + 0.5016 * sin(ws - PI / 3);
        double b = 0.6609 - 0.4767 * sin(ws - PI / 3);
        return (a + b * cos(w)) * shape(w, ws);
    }

    private static double erbs(double clearness, double ws) {
        double k = max(0.3, min(0.8, clearness));
        return ws <= toRadians(81.4)
                ? 1.391 - 3.560 * k + 4.189 * k * k - 2.137 * k * k * k
                : 1.311 - 3.022 * k + 3.427 * k * k - 1.821 * k * k * k;
    }

    private SunOpinion() {}
}
