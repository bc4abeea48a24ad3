package org.daybank.core.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * Where and by which clock hourly values were taken.
 *
 * @param latitude decimal degrees, positive to the north
 * @param longitude decimal degrees, positive to the east
 * @param utcOffset of the clock, the same all year
 * @param elevation above the sea, from −430 to 9000 m
 */
@RecordBuilder
public record Place(
        Latitude latitude,
        Longitude longitude,
        UtcOffset utcOffset,

        @Bounds(minimum = "-430 m", maximum = "9000 m", sensible = "0–5000 m")
        @Assumed(value = "0 m", source = "sea level: no elevation stated")
        Length elevation)
        implements PlaceBuilder.With {
    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public Place {
        elevation = Defaults.otherwise(elevation, Place.class, "elevation");
        Validation.of(Place.class, latitude, longitude, utcOffset, elevation).done();
    }
}
