package org.daybank.core.opinion;

import java.util.Arrays;
import java.util.Comparator;

/** The year's irradiances on the plane, dimmest first, with the sums of what is as bright or brighter. */
final class Sunshine {
    private final double[] light;
    private final double[] hours;
    private final double[] wattHours;

    Sunshine(SunOpinion.Month[] sun) {
        double[][] all = Arrays.stream(sun)
                .flatMap(month -> Arrays.stream(month.light)
                        .mapToObj(watts -> new double[] {watts, month.sliceHours * month.daysOfYear}))
                .sorted(Comparator.comparingDouble(slice -> slice[0]))
                .toArray(double[][]::new);
        light = new double[all.length];
        hours = new double[all.length + 1];
        wattHours = new double[all.length + 1];
        for (int i = all.length - 1; i >= 0; i--) {
            light[i] = all[i][0];
            hours[i] = hours[i + 1] + all[i][1];
            wattHours[i] = wattHours[i + 1] + all[i][0] * all[i][1];
        }
    }

    /** Share of the year's sunshine above an irradiance: {@code Σ max(0, G − limit)·t / Σ G·t}. */
    double above(double limit) {
        int at = Arrays.binarySearch(light, limit);
        int first = at < 0 ? -at - 1 : at;
        return wattHours[0] == 0 ? 0 : (wattHours[first] - limit * hours[first]) / wattHours[0];
    }
}
