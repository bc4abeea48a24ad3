package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when shade is compared.
 *
 * @param bypassVoltage drop across the bypass diodes of a module that the others' current passes by
 */
@RecordBuilder
public record ShadePolicy(
        @Bounds(minimum = "0 V", maximum = "5 V", sensible = "0.4–1.5 V")
        @Assumed(value = "0.5 V", source = "one Schottky diode")
        Voltage bypassVoltage)
        implements ShadePolicyBuilder.With {
    private static final ShadePolicy STANDARD = Defaults.of(ShadePolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public ShadePolicy {
        Validation.of(ShadePolicy.class, bypassVoltage).done();
    }

    /** The cited defaults. */
    public static ShadePolicy standard() {
        return STANDARD;
    }
}
