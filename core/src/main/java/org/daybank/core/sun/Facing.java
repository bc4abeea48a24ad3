package org.daybank.core.sun;

/**
 * The normal of a plane in plain numbers: up, north and east.
 *
 * @param skyShare part of the sky's half dome that the plane sees, (1 + cos β) / 2
 */
record Facing(double up, double north, double east, double skyShare) {

    static Facing of(Plane plane) {
        double cosTilt = plane.tilt().cosine();
        double sinTilt = plane.tilt().sine();
        return new Facing(
                cosTilt,
                sinTilt * plane.azimuth().cosine(),
                sinTilt * plane.azimuth().sine(),
                (1 + cosTilt) / 2);
    }

    /** Cosine of the angle between the normal and a direction; negative from behind. */
    double dot(double up, double north, double east) {
        return this.up * up + this.north * north + this.east * east;
    }

    /** Cosine of the angle between the normal and a direction, zero for light from behind. */
    double cosIncidence(double up, double north, double east) {
        return Math.max(0, dot(up, north, east));
    }
}
