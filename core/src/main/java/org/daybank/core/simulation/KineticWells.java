package org.daybank.core.simulation;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Validation;

/**
 * The kinetic battery of J. F. Manwell and J. G. McGowan (Solar Energy 50 (1993) 399–405): charge lies in two wells, one at
 * hand and one bound, between which it flows in proportion to the difference of their levels. A bank drawn hard seems empty
 * and comes back when it rests.
 *
 * @param availableShare c, width of the well at hand as a share of both: above 0, below 1
 * @param perHour k, how fast the levels come together, in 1/h: above 0
 */
public record KineticWells(Ratio availableShare, double perHour) {
    /**
     * Validation both.
     *
     * @throws org.daybank.core.schema.InvalidInput when one is absent or out of range
     */
    public KineticWells {
        new Validation()
                .required("availableShare", availableShare)
                .within("availableShare", availableShare, Ratio.of(0.001), Ratio.of(0.999))
                .within("perHour", perHour, 1e-6, 1e12)
                .done();
    }
}
