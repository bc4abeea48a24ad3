package org.daybank.core.sun;

import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * How a plane lies.
 *
 * @param tilt from the horizontal: 0° lies flat, 90° stands upright
 * @param azimuth where it faces, clockwise from north: 90° east, 180° south; given from −360° to 360° and kept from 0° to
 *     below 360°
 */
public record Plane(
        @Bounds(minimum = "0 deg", maximum = "90 deg") Angle tilt,

        @Bounds(minimum = "-360 deg", maximum = "360 deg") Angle azimuth) {

    /**
     * Validates both angles.
     *
     * @throws org.daybank.core.schema.InvalidInput when one is missing or out of range
     */
    public Plane {
        Validation.of(Plane.class, tilt, azimuth).done();
        azimuth = Angle.degrees((azimuth.degrees() + 360) % 360);
    }

    /** A plane that faces the equator: south on the northern half of the earth and on the equator, north on the southern. */
    public static Plane facingEquator(Latitude latitude, Angle tilt) {
        return new Plane(tilt, equatorward(latitude));
    }

    /** The azimuth of the equator: south on the northern half of the earth and on the equator, north on the southern. */
    public static Angle equatorward(Latitude latitude) {
        return Angle.degrees(latitude.degrees() < 0 ? 0 : 180);
    }
}
