package org.daybank.core.wiring;

import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Validation;

/**
 * The voltage at which a controller or inverter stops being able to take an array.
 *
 * @param model which one
 * @param maximumVoltage open-circuit voltage that destroys it when exceeded, less any reserve to be kept
 */
public record ControllerLimit(String model, Voltage maximumVoltage) {
    /** Refuses what can never be right. */
    public ControllerLimit {
        new Validation()
                .required("model", model)
                .required("maximumVoltage", maximumVoltage)
                .within("maximumVoltage", maximumVoltage, Voltage.volts(5), Voltage.volts(1500))
                .done();
    }
}
