package org.daybank.core.sun;

/**
 * Diffuse share of the global irradiation by clearness: D. G. Erbs, S. A. Klein, J. A. Duffie, "Estimation of the diffuse
 * radiation fraction for hourly, daily and monthly-average global radiation", Solar Energy 28 (1982) 293–302.
 */
final class Erbs {
    /** Highest monthly clearness of the published range; nothing is known above. */
    static final double CLEAREST_MONTH = 0.8;

    private static final double WINTER_SUNSET = Math.toRadians(81.4);

    private Erbs() {}

    /**
     * Share of a month's mean daily irradiation that is diffuse; the polynomials hold from 0.3 to 0.8 and are carried on
     * below, up to a share of one.
     *
     * @param clearness monthly mean, up to 0.8
     * @param sunset hour angle in radians
     */
    static double monthly(double clearness, double sunset) {
        double k = clearness;
        double share = sunset <= WINTER_SUNSET
                ? 1.391 - 3.560 * k + 4.189 * k * k - 2.137 * k * k * k
                : 1.311 - 3.022 * k + 3.427 * k * k - 1.821 * k * k * k;
        return Math.min(1, share);
    }

    /**
     * Share of an hour's irradiation that is diffuse.
     *
     * @param clearness of the hour, from 0
     */
    static double hourly(double clearness) {
        double k = clearness;
        if (k <= 0.22) {
            return 1 - 0.09 * k;
        }
        if (k <= 0.8) {
            return 0.9511 - k * (0.1604 - k * (4.388 - k * (16.638 - k * 12.336)));
        }
        return 0.165;
    }
}
