package org.daybank.core.sun;

import java.time.Month;
import java.util.List;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.schema.Scalars;
import org.daybank.core.working.Working;

/**
 * The sunshine of the twelve months on a plane.
 *
 * @param latitude where
 * @param plane how it lies
 * @param policy what was assumed
 * @param months from January
 */
public record MonthlySun(Latitude latitude, Plane plane, SunPolicy policy, List<SunMonth> months) {
    private static final int DAYS_OF_THE_YEAR = 365;

    /** Keeps a copy. */
    public MonthlySun {
        months = List.copyOf(months);
    }

    /** The mean day of a month. */
    public SunMonth in(Month month) {
        return months.get(month.getValue() - 1);
    }

    /** What falls on the plane on the mean day of the year. */
    public Irradiation yearlyMeanDay() {
        return yearly().dividedBy(DAYS_OF_THE_YEAR);
    }

    /** What falls on the plane in a year of 365 days. */
    public Irradiation yearly() {
        return months.stream().map(SunMonth::wholeMonth).reduce(Irradiation.ZERO, Irradiation::plus);
    }

    /** The steps, month by month, as one would write them on paper. */
    public Working working() {
        Working.Builder working = Working.builder();
        months.forEach(month -> write(month, working));
        return working.build();
    }

    private void write(SunMonth month, Working.Builder working) {
        String name = Scalars.name(month.month()) + ": ";
        working.step(
                        name + "declination",
                        "δ = 23.45° · sin(360° · (284 + n) / 365)",
                        "Cooper 1969; mean day n: Klein 1977",
                        month.declination(),
                        "23.45° · sin(360° · (284 + %s) / 365)",
                        MeanDays.dayOfYear(month.month()))
                .step(
                        name + "sunset hour angle",
                        "cos ω_s = −tan φ · tan δ",
                        "Duffie and Beckman, eq. 1.6.10",
                        month.sunsetHourAngle(),
                        "−tan(%s) · tan(%s)",
                        latitude,
                        month.declination())
                .step(
                        name + "extraterrestrial irradiation",
                        "H₀ = 24 h / π · G_sc · (1 + 0.033 · cos(360° · n / 365)) · (cos φ · cos δ · sin ω_s + ω_s · sin φ · sin δ)",
                        "Duffie and Beckman, eq. 1.10.3",
                        month.extraterrestrial(),
                        "G_sc = %s, φ = %s, δ = %s, ω_s = %s",
                        policy.solarConstant(),
                        latitude,
                        month.declination(),
                        month.sunsetHourAngle())
                .step(
                        name + "clearness",
                        "K = H / H₀",
                        "Liu and Jordan 1960",
                        month.clearness(),
                        "%s / %s",
                        month.horizontal(),
                        month.extraterrestrial())
                .step(
                        name + "diffuse fraction",
                        "monthly polynomial of K, by season through ω_s",
                        "Erbs, Klein and Duffie 1982",
                        month.diffuseFraction(),
                        "K = %s, ω_s = %s",
                        month.clearness(),
                        month.sunsetHourAngle())
                .step(
                        name + "plane of array",
                        "H_T = beam + sky diffuse + ground, summed over the day",
                        source(),
                        month.planeOfArray(),
                        "%s + %s + %s",
                        month.beam(),
                        month.skyDiffuse(),
                        month.ground());
    }

    private String source() {
        return "hourly shares: Collares-Pereira and Rabl 1979, Liu and Jordan 1960; sky: "
                + switch (policy.monthlySkyModel()) {
                    case ISOTROPIC -> "isotropic, Liu and Jordan 1960";
                    case HAY_DAVIES, PEREZ -> "Hay and Davies 1980";
                };
    }
}
