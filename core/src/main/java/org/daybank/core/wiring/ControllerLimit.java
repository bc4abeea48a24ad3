package org.daybank.core.wiring;

import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * The voltage at which a controller or inverter stops being able to take an array.
 *
 * @param model which one
 * @param maximumVoltage open-circuit voltage that destroys it when exceeded, less any reserve to be kept
 */
public record ControllerLimit(
        String model,
        @Bounds(minimum = "5 V", maximum = "1500 V") Voltage maximumVoltage) {
    /**
     * Validates the limit.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public ControllerLimit {
        Validation.of(ControllerLimit.class, model, maximumVoltage).done();
    }
}
