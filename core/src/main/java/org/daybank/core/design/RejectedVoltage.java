package org.daybank.core.design;

import java.util.List;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;

/**
 * A system nominal voltage for which no products make a system.
 *
 * @param voltage the system nominal voltage
 * @param failedChecks the rules that the nearest product fails, at least one
 */
public record RejectedVoltage(Voltage voltage, List<Check> failedChecks) {
    /** Keeps a copy. */
    public RejectedVoltage {
        failedChecks = List.copyOf(failedChecks);
    }
}
