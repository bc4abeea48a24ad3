package org.daybank.core.grid;

import org.daybank.core.quantity.Power;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * A grid inverter on the AC output of a multimode inverter, which runs it in an outage and charges the bank from it.
 *
 * @param gridInverterPower continuous AC power of the grid inverters
 * @param multimodePower continuous rating of the multimode inverter, both ways
 * @param bankAccepts most power that the bank takes
 * @param leastLoad that surely runs while the sun shines
 */
public record Coupling(
        @Bounds(exclusiveMinimum = "0 W", maximum = "100000 kW")
        Power gridInverterPower,

        @Bounds(exclusiveMinimum = "0 W", maximum = "100000 kW")
        Power multimodePower,

        @Bounds(minimum = "0 W", maximum = "100000 kW") Power bankAccepts,

        @Bounds(minimum = "0 W", maximum = "100000 kW") @Assumed(value = "0 W", source = "nothing runs for sure")
        Power leastLoad) {
    /**
     * Validates the arrangement.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public Coupling {
        leastLoad = Defaults.otherwise(leastLoad, Coupling.class, "leastLoad");
        Validation.of(Coupling.class, gridInverterPower, multimodePower, bankAccepts, leastLoad)
                .done();
    }
}
