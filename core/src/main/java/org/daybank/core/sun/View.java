package org.daybank.core.sun;

import org.daybank.core.site.Horizon;

/**
 * What a plane sees: its normal, the skyline, and how much of an even sky and of the ground lies before it.
 *
 * @param skyShare of an even sky above the skyline; (1 + cos β) / 2 when the horizon is open
 * @param groundShare of the ground, (1 − cos β) / 2
 */
record View(Facing facing, Skyline skyline, double skyShare, double groundShare) {

    static View of(Plane plane, Horizon horizon) {
        Facing facing = Facing.of(plane);
        Skyline skyline = Skyline.of(horizon);
        return new View(facing, skyline, skyline.skyShare(facing), 1 - facing.skyShare());
    }

    /** Cosine of the angle between the normal and the sun; zero when it stands behind the plane or the skyline. */
    double cosIncidence(double up, double north, double east) {
        double cosine = facing.dot(up, north, east);
        return cosine > 0 && skyline.clears(up, north, east) ? cosine : 0;
    }
}
