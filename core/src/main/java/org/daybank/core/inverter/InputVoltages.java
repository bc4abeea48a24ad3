package org.daybank.core.inverter;

import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/** What the voltages of an array input on a data sheet must satisfy among each other. */
final class InputVoltages {
    private InputVoltages() {}

    /** Refuses a tracking window that is empty or extends above the maximum input voltage. */
    static Validation validate(
            Validation validation,
            @Nullable Voltage maximum,
            @Nullable Voltage trackingLowest,
            @Nullable Voltage trackingHighest) {
        return validation
                .exceeds("trackingHighest", trackingHighest, "trackingLowest", trackingLowest)
                .notAbove("trackingHighest", trackingHighest, "maximumInputVoltage", maximum);
    }
}
