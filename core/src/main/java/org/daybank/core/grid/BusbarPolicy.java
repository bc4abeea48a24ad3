package org.daybank.core.grid;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What is assumed where an inverter feeds a panel.
 *
 * @param sourceFactor on the inverter's continuous current
 * @param busbarFactor on the busbar's rating, when main and inverter feed it from opposite ends
 */
public record BusbarPolicy(
        @Bounds(minimum = "1", maximum = "1.5") @Assumed(value = "1.25", source = "NFPA 70 705.12(B), 2020")
        Ratio sourceFactor,

        @Bounds(minimum = "1", maximum = "1.2") @Assumed(value = "1.2", source = "NFPA 70 705.12(B)(3)(2), 2020")
        Ratio busbarFactor) {
    private static final BusbarPolicy STANDARD = Defaults.of(BusbarPolicy.class);

    /**
     * Validates the policy.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds or contradicts another
     */
    public BusbarPolicy {
        sourceFactor = Defaults.otherwise(sourceFactor, BusbarPolicy.class, "sourceFactor");
        busbarFactor = Defaults.otherwise(busbarFactor, BusbarPolicy.class, "busbarFactor");
        Validation.of(BusbarPolicy.class, sourceFactor, busbarFactor).done();
    }

    /** The cited defaults. */
    public static BusbarPolicy standard() {
        return STANDARD;
    }
}
