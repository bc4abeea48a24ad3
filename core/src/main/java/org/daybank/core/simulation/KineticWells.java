package org.daybank.core.simulation;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * The kinetic battery of J. F. Manwell and J. G. McGowan (Solar Energy 50 (1993) 399–405): charge lies in two wells, one at
 * hand and one bound, between which it flows in proportion to the difference of their levels. A bank drawn hard seems empty
 * and comes back when it rests.
 *
 * @param availableShare c, width of the well at hand as a share of both: above 0, below 1
 * @param perHour k, how fast the levels come together, in 1/h: from 1e-6 to 1e9, where they are level at once
 */
public record KineticWells(
        @Bounds(minimum = "0.001", maximum = "0.999") Ratio availableShare,

        @Bounds(minimum = "0.000001", maximum = "1000000000", sensible = "0.1–10")
        double perHour) {
    /**
     * Validates both.
     *
     * @throws org.daybank.core.schema.InvalidInput when one is absent or out of range
     */
    public KineticWells {
        Validation.of(KineticWells.class, availableShare, perHour).done();
    }
}
