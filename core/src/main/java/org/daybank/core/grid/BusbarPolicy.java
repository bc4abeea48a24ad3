package org.daybank.core.grid;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What is assumed where an inverter feeds a panel.
 *
 * @param sourceFactor on the inverter's continuous current
 * @param busbarFactor on the busbar's rating, when main and inverter feed it from opposite ends
 */
public record BusbarPolicy(
        @Assumed(value = "1.25", least = "1", most = "1.5", source = "NFPA 70 705.12(B), 2020")
        Ratio sourceFactor,

        @Assumed(value = "1.2", least = "1", most = "1.2", source = "NFPA 70 705.12(B)(3)(2), 2020")
        Ratio busbarFactor) {
    private static final BusbarPolicy STANDARD = Policies.standard(BusbarPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public BusbarPolicy {
        Policies.check(BusbarPolicy.class, sourceFactor, busbarFactor);
    }

    /** The cited defaults. */
    public static BusbarPolicy standard() {
        return STANDARD;
    }
}
