package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with when shade is compared.
 *
 * @param bypassVoltage drop across the bypass diodes of a module that the others' current passes by
 */
@RecordBuilder
public record ShadePolicy(
        @Assumed(value = "0.5 V", least = "0 V", most = "5 V", sensible = "0.4–1.5 V", source = "one Schottky diode")
        Voltage bypassVoltage)
        implements ShadePolicyBuilder.With {
    private static final ShadePolicy STANDARD = Policies.standard(ShadePolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public ShadePolicy {
        Policies.check(ShadePolicy.class, bypassVoltage);
    }

    /** The cited defaults. */
    public static ShadePolicy standard() {
        return STANDARD;
    }
}
