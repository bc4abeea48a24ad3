package org.daybank.core.sun;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Horizon;

/**
 * How a plane lies in its surroundings.
 *
 * @param plane tilt and azimuth
 * @param horizon what stands between it and the low sun
 * @param albedo share of the sunlight that the ground throws back, twelve from January
 */
@RecordBuilder
public record Exposure(
        Plane plane,

        @Assumed(value = "open", source = "nothing stated that would shade the array")
        Horizon horizon,

        @Bounds(
                minimum = "0",
                maximum = "1",
                minimumItems = 12,
                maximumItems = 12,
                sensible = "0.2 grass or soil, to 0.8 fresh snow")
        @Assumed(source = "0.2 in every month: ground without snow")
        List<Ratio> albedo)
        implements ExposureBuilder.With {
    private static final int MONTHS = 12;

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public Exposure {
        horizon = horizon == null ? Horizon.OPEN : horizon;
        albedo = albedo == null ? Collections.nCopies(MONTHS, Ratio.of(0.2)) : albedo;
        Validation.of(Exposure.class, plane, horizon, albedo).done();
        albedo = List.copyOf(albedo);
    }
}
