package org.daybank.core.design;

import java.util.List;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;

/**
 * The bus voltage chosen, and why each lower one was passed over.
 *
 * @param voltage what the bus is called
 * @param passedOver the voltages that were looked at before and did not do
 */
public record NominalVoltage(Voltage voltage, List<PassedOver> passedOver) {
    /** Keeps a copy. */
    public NominalVoltage {
        passedOver = List.copyOf(passedOver);
    }

    /**
     * A voltage that did not do.
     *
     * @param voltage what the bus would be called
     * @param reasons with their figures
     */
    public record PassedOver(Voltage voltage, List<Check> reasons) {
        /** Keeps a copy. */
        public PassedOver {
            reasons = List.copyOf(reasons);
        }
    }
}
