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
        Power gridInverterPower,
        Power multimodePower,
        Power bankAccepts,

        @Bounds(minimum = "0 W", maximum = "100000 kW") @Assumed(value = "0 W", source = "nothing runs for sure")
        Power leastLoad) {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public Coupling {
        leastLoad = Defaults.otherwise(leastLoad, Coupling.class, "leastLoad");
        new Validation()
                .required("gridInverterPower", gridInverterPower)
                .above("gridInverterPower", gridInverterPower, Power.ZERO)
                .required("multimodePower", multimodePower)
                .above("multimodePower", multimodePower, Power.ZERO)
                .required("bankAccepts", bankAccepts)
                .atLeast("bankAccepts", bankAccepts, Power.ZERO)
                .done();
        Validation.of(Coupling.class, gridInverterPower, multimodePower, bankAccepts, leastLoad)
                .done();
    }
}
