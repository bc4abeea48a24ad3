package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Place;

/**
 * Where and when the hours of a CSV text were taken.
 *
 * @param place where and by which clock
 * @param year of the calendar that the hours follow
 */
public record ClimatePlace(
        @Inline Place place,
        @Bounds(minimum = "1950", maximum = "2050") int year) {
    /** Refuses what is missing or out of range. */
    public ClimatePlace {
        Validation.of(ClimatePlace.class, place, year).done();
    }
}
