package org.daybank.core.inverter;

import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/** Validation what a data sheet says of the voltages of its array input. */
final class InputVoltages {
    private InputVoltages() {}

    static void check(
            Validation checks,
            @Nullable Voltage maximum,
            @Nullable Voltage trackingLowest,
            @Nullable Voltage trackingHighest) {
        checks.required("maximumInputVoltage", maximum)
                .within("maximumInputVoltage", maximum, Voltage.volts(10), Voltage.volts(3000))
                .required("trackingLowest", trackingLowest)
                .above("trackingLowest", trackingLowest, Voltage.ZERO)
                .required("trackingHighest", trackingHighest)
                .that(
                        trackingLowest == null
                                || trackingHighest == null
                                || trackingLowest.compareTo(trackingHighest) < 0,
                        "trackingHighest",
                        ProblemCode.INCONSISTENT,
                        () -> "trackingHighest must be above trackingLowest %s, but was %s."
                                .formatted(trackingLowest, trackingHighest))
                .that(
                        maximum == null || trackingHighest == null || trackingHighest.compareTo(maximum) <= 0,
                        "trackingHighest",
                        ProblemCode.INCONSISTENT,
                        () -> "trackingHighest must be at most maximumInputVoltage %s, but was %s."
                                .formatted(maximum, trackingHighest));
    }
}
