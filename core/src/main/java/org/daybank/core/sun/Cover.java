package org.daybank.core.sun;

/** What the light passes on its way into the cells, and how much of slanting light it lets through. */
public enum Cover {
    /** Nothing: light from every angle counts in full. */
    NONE,
    /** Plain glass: reflects slanting light by Fresnel's law and takes a little on the way. */
    GLASS;

    private static final double REFRACTIVE_INDEX = 1.526;

    /** Extinction of 4 m⁻¹ along 2 mm of glass. */
    private static final double EXTINCTION = 4 * 0.002;

    private static final double STRAIGHT = transmitted(1);

    /**
     * Share of the light that gets through, against light that falls straight on: W. De Soto, S. A. Klein, W. A. Beckman,
     * Solar Energy 80 (2006) 78–88, eq. 13 and 14.
     *
     * @param cosIncidence cosine of the angle between light and normal, from 0 to 1
     */
    double admitted(double cosIncidence) {
        if (this == NONE) {
            return 1;
        }
        return cosIncidence > 0 ? transmitted(cosIncidence) / STRAIGHT : 0;
    }

    private static double transmitted(double cosIncidence) {
        double n = REFRACTIVE_INDEX;
        double cosRefracted = Math.sqrt(1 - (1 - cosIncidence * cosIncidence) / (n * n));
        double across = (cosIncidence - n * cosRefracted) / (cosIncidence + n * cosRefracted);
        double along = (cosRefracted - n * cosIncidence) / (cosRefracted + n * cosIncidence);
        // EXTINCTION / cosRefracted is at most 0.011: the exponential by its first terms is right to 2e-7
        double depth = EXTINCTION / cosRefracted;
        return (1 - depth * (1 - depth / 2)) * (1 - (across * across + along * along) / 2);
    }

    /**
     * Share of the sky's light that gets through, by the angle at which beam would do as well: M. J. Brandemuehl, W. A.
     * Beckman, Solar Energy 24 (1980) 511–513.
     */
    double skyAdmitted(double tiltDegrees) {
        return admitted(Math.cos(Math.toRadians(59.7 - 0.1388 * tiltDegrees + 0.001497 * tiltDegrees * tiltDegrees)));
    }

    /** Share of the ground's light that gets through, from the same source. */
    double groundAdmitted(double tiltDegrees) {
        return admitted(Math.cos(Math.toRadians(90 - 0.5788 * tiltDegrees + 0.002693 * tiltDegrees * tiltDegrees)));
    }
}
