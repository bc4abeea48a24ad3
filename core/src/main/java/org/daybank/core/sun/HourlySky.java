package org.daybank.core.sun;

import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.WeatherYear;

/**
 * The sky of a weather year, made ready once: where the sun stands in the middle of every hour, and the direct and diffuse
 * light. It can then be turned onto any number of planes. Unchangeable.
 */
public final class HourlySky {
    final WeatherYear weather;
    final SunPolicy policy;
    final SunPath path;
    final Components light;

    private HourlySky(WeatherYear weather, SunPolicy policy, SunPath path, Components light) {
        this.weather = weather;
        this.policy = policy;
        this.path = path;
        this.light = light;
    }

    /**
     * Makes a weather year ready. Where it does not say how the light is made up, the diffuse part is found by the clearness
     * of the hour (Erbs, Klein and Duffie 1982); direct light is never more than the sun sends.
     */
    public static HourlySky of(WeatherYear weather, SunPolicy policy) {
        SunPath path = SunPath.of(weather.place(), weather.calendar(), policy);
        return new HourlySky(weather, policy, path, Components.of(weather, path));
    }

    /** Where the sun stands in every hour. */
    public SunPath path() {
        return path;
    }

    /** The weather year with global, direct and diffuse irradiance all there. */
    public WeatherYear completed() {
        return weather.withGlobal(HourlySeries.wattsPerSquareMetre(light.global))
                .withDirect(HourlySeries.wattsPerSquareMetre(light.direct))
                .withDiffuse(HourlySeries.wattsPerSquareMetre(light.diffuse));
    }

    /** What falls on a plane, hour by hour, with the hourly sky model of the policy. */
    public HourlySun on(Exposure exposure) {
        return new Transposition(this, exposure).turn();
    }
}
