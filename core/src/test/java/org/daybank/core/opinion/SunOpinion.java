package org.daybank.core.opinion;

import static java.lang.Math.PI;
import static java.lang.Math.acos;
import static java.lang.Math.cos;
import static java.lang.Math.exp;
import static java.lang.Math.log;
import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.pow;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

/**
 * Sunshine on a plane from monthly means: Klein 1977 mean days, Cooper's declination as Klein uses it, Erbs and others
 * 1982 for the monthly diffuse share, Collares-Pereira and Rabl 1979 and Liu and Jordan 1960 for the shares of the
 * hours, Hay and Davies 1980 for the tilt. The day is cut into {@value #SLICES} slices from sunrise to sunset; both
 * shares are normalised; the diffuse keeps its sum and the beam, never negative, is brought to its own.
 *
 * <p>The yield of a month stands on ten days, dull to clear, by Bendt, Collares-Pereira and Rabl 1981 between 0.05 and
 * the greatest clearness of Hollands and Huget 1983, with the sum of the mean day.
 */
final class SunOpinion {
    static final int SLICES = 48;
    static final int DAYS = 10;
    private static final int[] MEAN_DAYS = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};
    private static final int[] LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    /** One month's mean day; irradiations in Wh/m². */
    static final class Month {
        double declination;
        double sunset;
        double extraterrestrial;
        double clearness;
        double diffuseFraction;
        double beam;
        double sky;
        double ground;

        /** Irradiance on the plane in W/m² in each slice of the ten days, and how long each counts on the mean day. */
        final double[] light = new double[SLICES * DAYS];

        double sliceHours;
        double daysOfYear;

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
        Month[] all = meanDays(ask);
        for (int m = 0; m < 12; m++) {
            likelyDays(ask, m, all[m]);
        }
        return all;
    }

    /** The mean days alone. */
    static Month[] meanDays(Ask ask) {
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
        month.clearness = ask.horizontalWattHours[m] / month.extraterrestrial;
        month.diffuseFraction = erbs(month.clearness, ws);
        month.sliceHours = ws * 24 / PI / SLICES / DAYS;
        month.daysOfYear = m == 1 ? 28.25 : LENGTHS[m];
        double[] parts = new double[3];
        turned(ask, m, month, month.clearness, parts, new double[SLICES]);
        month.beam = parts[0];
        month.sky = parts[1];
        month.ground = parts[2];
        return month;
    }

    private static void likelyDays(Ask ask, int m, Month month) {
        double[] likely = likely(month.clearness);
        double sum = 0;
        for (int d = 0; d < DAYS; d++) {
            double[] day = new double[SLICES];
            turned(ask, m, month, likely[d], new double[3], day);
            for (int i = 0; i < SLICES; i++) {
                month.light[d * SLICES + i] = day[i];
                sum += day[i] * month.sliceHours;
            }
        }
        for (int i = 0; i < month.light.length && sum > 0; i++) {
            month.light[i] *= month.planeOfArray() / sum;
        }
    }

    /** Turns a day onto the plane: sums of beam, sky and ground in Wh/m², and the irradiance of each slice in W/m². */
    private static void turned(Ask ask, int m, Month month, double clearness, double[] parts, double[] watts) {
        double ws = month.sunset;
        double phi = toRadians(ask.latitude);
        double delta = month.declination;
        double hours = ws * 24 / PI / SLICES;
        double global = clearness * month.extraterrestrial;
        double diffuse = global * erbs(clearness, ws);
        double totals = 0;
        double shapes = 0;
        for (int i = 0; i < SLICES; i++) {
            totals += total(angle(i, ws), ws);
            shapes += shape(angle(i, ws), ws);
        }
        double beams = 0;
        for (int i = 0; i < SLICES; i++) {
            beams += max(0, global * total(angle(i, ws), ws) / totals - diffuse * shape(angle(i, ws), ws) / shapes);
        }
        double beta = toRadians(ask.tilt);
        double gamma = toRadians(ask.azimuth);
        for (int i = 0; i < SLICES; i++) {
            double w = angle(i, ws);
            double up = cos(phi) * cos(delta) * shape(w, ws);
            double east = -cos(delta) * sin(w);
            double north = cos(phi) * sin(delta) - sin(phi) * cos(delta) * cos(w);
            double incidence = east * sin(beta) * sin(gamma) + north * sin(beta) * cos(gamma) + up * cos(beta);
            double turned = max(0, incidence) / up;
            double all = global * total(w, ws) / totals;
            double scattered = diffuse * shape(w, ws) / shapes;
            double direct = beams > 0 ? max(0, all - scattered) * (global - diffuse) / beams : 0;
            double outside = month.extraterrestrial * shape(w, ws) / shapes;
            double around = ask.isotropic ? 0 : min(1, direct / outside);
            double beam = direct * turned;
            // what is not beam is diffuse: at the edges of the day a little more than Liu and Jordan's share
            double sky = (all - direct) * (around * turned + (1 - around) * (1 + cos(beta)) / 2);
            double ground = all * ask.albedo[m] * (1 - cos(beta)) / 2;
            parts[0] += beam;
            parts[1] += sky;
            parts[2] += ground;
            watts[i] = (beam + sky + ground) / hours;
        }
    }

    private static double angle(int slice, double ws) {
        return ws * ((2 * slice + 1.0) / SLICES - 1);
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

    /** Published from 0.3 to 0.8; carried on below, where nearly all is diffuse; above, what is more is diffuse. */
    private static double erbs(double clearness, double ws) {
        double k = min(0.8, clearness);
        double share = ws <= toRadians(81.4)
                ? 1.391 - 3.560 * k + 4.189 * k * k - 2.137 * k * k * k
                : 1.311 - 3.022 * k + 3.427 * k * k - 1.821 * k * k * k;
        return clearness == 0 ? 1 : 1 - (1 - min(1, share)) * k / clearness;
    }

    /** Ten clearness indices, each for a tenth of the days: the exponential {@code e^(γK)} cut off at both ends. */
    static double[] likely(double mean) {
        double least = 0.05;
        double most = 0.6313 + 0.267 * mean - 11.9 * pow(mean - 0.75, 8);
        double low = -300;
        double high = 300;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (meanOf(middle, least, most) < mean) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double gamma = (low + high) / 2;
        double[] days = new double[DAYS];
        double sum = 0;
        for (int d = 0; d < DAYS; d++) {
            double share = (d + 0.5) / DAYS;
            // F = (e^(γK) − e^(γ·K_min)) / (e^(γ·K_max) − e^(γ·K_min)), solved for K
            days[d] = mean <= least || mean >= most
                    ? mean
                    : Math.abs(gamma) < 1e-7
                            ? least + share * (most - least)
                            : most + log(share + (1 - share) * exp(gamma * (least - most))) / gamma;
            sum += days[d];
        }
        for (int d = 0; d < DAYS; d++) {
            days[d] *= sum > 0 ? mean * DAYS / sum : 0;
        }
        return days;
    }

    /** {@code ∫K·e^(γK) / ∫e^(γK)} between the ends. */
    private static double meanOf(double gamma, double least, double most) {
        double x = gamma * (most - least);
        return Math.abs(x) < 1e-7
                ? (least + most) / 2 + x * (most - least) / 12
                : most - 1 / gamma + (most - least) / Math.expm1(x);
    }

    private SunOpinion() {}
}
