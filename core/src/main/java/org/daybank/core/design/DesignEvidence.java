package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.bank.BatteryLife;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.working.Check;

/**
 * What checks and simulation show of a system on a bank.
 *
 * @param checks rules across parts, which a design need not pass
 * @param availability what the hours of one or many years show; empty when none were simulated
 * @param batteryLife life of the bank in this use and the price of a kilowatt-hour out of it; empty when its data sheet does
 *     not state its cycle life
 */
public record DesignEvidence(
        List<Check> checks, Optional<Reliability> availability, Optional<BatteryLife> batteryLife) {
    /** Keeps a copy. */
    public DesignEvidence {
        checks = List.copyOf(checks);
    }
}
