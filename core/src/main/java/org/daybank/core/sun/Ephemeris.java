package org.daybank.core.sun;

/**
 * Where the sun stands among the stars and how far the earth has turned, in plain numbers: J. Meeus, "Astronomical
 * Algorithms", 2nd ed. 1998, chapters 12 (sidereal time) and 25 (solar coordinates, lower accuracy), with the pull of the
 * planets and the moon from his "Astronomical Formulae for Calculators", chapter 18: good to 0.005°.
 *
 * @param declination of the sun, apparent, radians
 * @param greenwichHourAngle of the sun, radians, positive after its noon at Greenwich, from −π to π
 * @param distance of the sun, astronomical units
 */
record Ephemeris(double declination, double greenwichHourAngle, double distance) {
    /** Days of the Julian date at noon of 1 January 2000 since midnight of 1 January 1970. */
    private static final double J2000_SINCE_1970 = 10957.5;

    private static final double DAYS_OF_A_CENTURY = 36525;

    /** Terrestrial less universal time in the middle of 1950–2050; at most 40 s off, in which the sun moves 0.0005°. */
    private static final double TERRESTRIAL_AHEAD_DAYS = 65 / 86400.0;

    /**
     * Finds the sun.
     *
     * @param daysSince1970 universal time in days and parts of a day since the beginning of 1970
     */
    static Ephemeris at(double daysSince1970) {
        double days = daysSince1970 - J2000_SINCE_1970;
        double t = (days + TERRESTRIAL_AHEAD_DAYS) / DAYS_OF_A_CENTURY;
        double meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
        double meanAnomaly = Math.toRadians(357.52911 + t * (35999.05029 - t * 0.0001537));
        double eccentricity = 0.016708634 - t * 0.000042037;
        double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * Math.sin(meanAnomaly)
                + (0.019993 - t * 0.000101) * Math.sin(2 * meanAnomaly)
                + 0.000289 * Math.sin(3 * meanAnomaly);
        double node = Math.toRadians(125.04 - 1934.136 * t);
        double nutation = -0.00478 * Math.sin(node);
        double longitude = Math.toRadians(meanLongitude + centre + pull(t + 1) - 0.00569 + nutation);
        double obliquity = Math.toRadians(23.439291 - 0.0130042 * t + 0.00256 * Math.cos(node));
        double rightAscension = Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude));
        double sidereal =
                Math.toRadians((280.46061837 + 360.98564736629 * days + nutation * Math.cos(obliquity)) % 360);
        double distance = 1.000001018
                * (1 - eccentricity * eccentricity)
                / (1 + eccentricity * Math.cos(meanAnomaly + Math.toRadians(centre)));
        return new Ephemeris(
                Math.asin(Math.sin(obliquity) * Math.sin(longitude)),
                Math.IEEEremainder(sidereal - rightAscension, 2 * Math.PI),
                distance);
    }

    /** Degrees by which Venus (twice), Jupiter, the moon and a long swing shift the sun; centuries count from 1900. */
    private static double pull(double centuries) {
        return 0.00134 * Math.cos(Math.toRadians(153.23 + 22518.7541 * centuries))
                + 0.00154 * Math.cos(Math.toRadians(216.57 + 45037.5082 * centuries))
                + 0.00200 * Math.cos(Math.toRadians(312.69 + 32964.3577 * centuries))
                + 0.00179 * Math.sin(Math.toRadians(350.74 + 445267.1142 * centuries))
                + 0.00178 * Math.sin(Math.toRadians(231.19 + 20.20 * centuries));
    }
}
