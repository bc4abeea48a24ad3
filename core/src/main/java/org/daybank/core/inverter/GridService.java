package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * The grid that an array is to feed, and where the inverters hang.
 *
 * @param service voltage, frequency and phases of the grid
 * @param hottestAir air around the inverters
 */
@RecordBuilder
public record GridService(
        @Assumed(source = "IEC 60038: 230 V, 50 Hz, one phase")
        Service service,

        @Bounds(minimum = "-40 Cel", maximum = "90 Cel", sensible = "25–70 °C")
        @Assumed(value = "40 Cel", source = "no temperature stated")
        Temperature hottestAir)
        implements GridServiceBuilder.With {
    /**
     * Validates the service.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds
     */
    public GridService {
        service = Objects.requireNonNullElseGet(service, Service::standard);
        hottestAir = Defaults.otherwise(hottestAir, GridService.class, "hottestAir");
        Validation.of(GridService.class, service, hottestAir).done();
    }
}
