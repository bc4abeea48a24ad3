package org.daybank.core.inverter;

import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
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
        @Assumed(value = "230 V", source = "IEC 60038") Voltage voltage,
        @Assumed(value = "50 Hz", source = "IEC 60038") Frequency frequency,

        @Assumed(value = "single", source = "small systems have one phase")
        Phases phases) {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value can never be right
     */
    public Service {
        voltage = Defaults.otherwise(voltage, Service.class, "voltage");
        frequency = Defaults.otherwise(frequency, Service.class, "frequency");
        phases = Defaults.otherwise(phases, Service.class, "phases");
        new Validation()
                .within("voltage", voltage, Voltage.volts(90), Voltage.volts(400))
                .within("frequency", frequency, Frequency.hertz(45), Frequency.hertz(65))
                .done();
    }

    /** 230 V, 50 Hz, one phase. */
    public static Service standard() {
        return Defaults.of(Service.class);
    }
}
