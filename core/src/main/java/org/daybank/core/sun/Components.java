package org.daybank.core.sun;

import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.WeatherYear;
import org.jspecify.annotations.Nullable;

/**
 * Direct, diffuse and global irradiance of every hour, in W/m²; what the weather does not say is found from what it says.
 *
 * <p>With the sun lower than 3° in the middle of an hour, light that is not known to be direct counts as diffuse: a share of
 * the hour cannot be divided by so small a height.
 */
final class Components {
    private static final double LOWEST = Math.sin(Math.toRadians(3));
    private static final int HOURS_OF_A_DAY = 24;

    final double[] direct;
    final double[] diffuse;
    final double[] global;

    private Components(double[] direct, double[] diffuse, double[] global) {
        this.direct = direct;
        this.diffuse = diffuse;
        this.global = global;
    }

    static Components of(WeatherYear weather, SunPath path) {
        HourlySeries global = weather.global();
        HourlySeries direct = weather.direct();
        HourlySeries diffuse = weather.diffuse();
        if (direct != null && diffuse != null) {
            return ofDirectAndDiffuse(direct.values(), diffuse.values(), global, path);
        }
        if (global == null) {
            throw new IllegalStateException("a weather year has global irradiance, or direct and diffuse");
        }
        return direct != null
                ? ofGlobalAndDirect(global.values(), direct.values(), path)
                : ofGlobal(global.values(), diffuse, path);
    }

    private static Components ofDirectAndDiffuse(
            double[] direct, double[] diffuse, @Nullable HourlySeries given, SunPath path) {
        double[] global = given != null ? given.values() : new double[direct.length];
        if (given == null) {
            for (int hour = 0; hour < global.length; hour++) {
                global[hour] = diffuse[hour] + direct[hour] * Math.max(0, path.up[hour]);
            }
        }
        return new Components(direct, diffuse, global);
    }

    private static Components ofGlobalAndDirect(double[] global, double[] direct, SunPath path) {
        double[] diffuse = new double[global.length];
        for (int hour = 0; hour < global.length; hour++) {
            diffuse[hour] = Math.max(0, global[hour] - direct[hour] * Math.max(0, path.up[hour]));
        }
        return new Components(direct, diffuse, global);
    }

    /** The diffuse part as measured, or by the hour's clearness. */
    private static Components ofGlobal(double[] global, @Nullable HourlySeries measuredDiffuse, SunPath path) {
        double[] direct = new double[global.length];
        double[] diffuse = new double[global.length];
        for (int hour = 0; hour < global.length; hour++) {
            double up = path.up[hour];
            diffuse[hour] = global[hour];
            if (up > LOWEST && global[hour] > 0) {
                double extraterrestrial = path.normalExtraterrestrial[hour / HOURS_OF_A_DAY];
                double sky = measuredDiffuse != null
                        ? Math.min(measuredDiffuse.at(hour), global[hour])
                        : global[hour] * Erbs.hourly(global[hour] / (extraterrestrial * up));
                direct[hour] = Math.min((global[hour] - sky) / up, extraterrestrial);
                diffuse[hour] = global[hour] - direct[hour] * up;
            }
        }
        return new Components(direct, diffuse, global);
    }
}
