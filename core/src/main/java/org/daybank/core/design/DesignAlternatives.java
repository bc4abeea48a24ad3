package org.daybank.core.design;

import java.util.List;
import org.daybank.core.wiring.StringVoltages;

/**
 * Other designs of a system on a bank, and what they cost.
 *
 * @param designs other complete designs, cheapest first
 * @param autonomyPrices prices of shorter and longer autonomy
 * @param availabilityFrontier of the systems simulated for a required availability, those that no cheaper one is as available
 *     as; empty without such a requirement
 * @param stringVoltages the same array at higher string voltages: the price of its conductors, and the controllers that permit
 *     each
 */
public record DesignAlternatives(
        List<Alternative> designs,
        List<AutonomyPoint> autonomyPrices,
        List<FrontierPoint> availabilityFrontier,
        StringVoltages stringVoltages) {
    /** Keeps copies. */
    public DesignAlternatives {
        designs = List.copyOf(designs);
        autonomyPrices = List.copyOf(autonomyPrices);
        availabilityFrontier = List.copyOf(availabilityFrontier);
    }
}
