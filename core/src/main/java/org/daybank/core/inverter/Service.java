package org.daybank.core.inverter;

import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * The AC service that the loads are made for.
 *
 * @param voltage from line to neutral
 * @param frequency 50 or 60 Hz
 * @param phases how it is divided
 */
public record Service(
        @Bounds(minimum = "90 V", maximum = "400 V", sensible = "120 V or 230 V")
        @Assumed(value = "230 V", source = "IEC 60038")
        Voltage voltage,

        @Bounds(minimum = "45 Hz", maximum = "65 Hz", sensible = "50 Hz or 60 Hz")
        @Assumed(value = "50 Hz", source = "IEC 60038")
        Frequency frequency,

        @Assumed(value = "single", source = "small systems have one phase")
        Phases phases) {
    /**
     * Validates the service.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds
     */
    public Service {
        voltage = Defaults.otherwise(voltage, Service.class, "voltage");
        frequency = Defaults.otherwise(frequency, Service.class, "frequency");
        phases = Defaults.otherwise(phases, Service.class, "phases");
        Validation.of(Service.class, voltage, frequency, phases).done();
    }

    /** 230 V, 50 Hz, one phase. */
    public static Service standard() {
        return Defaults.of(Service.class);
    }
}
