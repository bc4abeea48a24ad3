package org.daybank.core.sun;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.schema.Scalars;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.working.Working;

/**
 * The sunshine of a year on a plane, hour by hour, in W/m².
 *
 * @param exposure how the plane lies
 * @param policy what was assumed
 * @param calendar which day each hour falls on
 * @param beam straight from the sun
 * @param skyDiffuse from the sky, the light around the sun included
 * @param ground from the ground
 * @param planeOfArray sum of the three
 * @param effective what of it gets through the cover
 */
public record HourlySun(
        Exposure exposure,
        SunPolicy policy,
        HourCalendar calendar,
        HourlySeries beam,
        HourlySeries skyDiffuse,
        HourlySeries ground,
        HourlySeries planeOfArray,
        HourlySeries effective) {

    /** What falls on the plane on a mean day of each month. */
    public List<Irradiation> dailyByMonth() {
        return Arrays.stream(Month.values())
                .map(month -> Irradiation.wattHoursPerSquareMetre(
                        24 * planeOfArray.mean(calendar.firstHour(month), calendar.endHour(month))))
                .toList();
    }

    /** What falls on the plane in the year. */
    public Irradiation yearly() {
        return yearly(planeOfArray);
    }

    private static Irradiation yearly(HourlySeries series) {
        return Irradiation.wattHoursPerSquareMetre(series.sum(0, series.size()));
    }

    /** The sums of the year, as one would write them on paper. */
    public Working working() {
        return Working.builder()
                .step(
                        "plane of array",
                        "H_T = beam + sky diffuse + ground, summed over every hour",
                        switch (policy.hourlySkyModel()) {
                            case ISOTROPIC -> "Liu and Jordan 1960";
                            case HAY_DAVIES -> "Hay and Davies 1980";
                            case PEREZ -> "Perez and others 1990";
                        },
                        yearly(),
                        "%s + %s + %s",
                        yearly(beam),
                        yearly(skyDiffuse),
                        yearly(ground))
                .step(
                        "effective",
                        "what gets through the cover: " + Scalars.name(policy.cover()),
                        "De Soto, Klein and Beckman 2006; Brandemuehl and Beckman 1980",
                        yearly(effective),
                        "%s of %s",
                        yearly(effective),
                        yearly())
                .build();
    }
}
