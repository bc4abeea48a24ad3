package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.EnergyDemand;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.schema.Validation;

/**
 * What do the loads draw, by month, and what must an inverter carry and start?
 *
 * @param demand the loads
 * @param policy what is assumed
 */
public record EnergyBudgetRequest(@Inline EnergyDemand demand, LoadPolicy policy) {
    /** Refuses what is missing or out of range. */
    public EnergyBudgetRequest {
        Validation.of(EnergyBudgetRequest.class, demand, policy).done();
    }

    /** Asks the library. */
    public EnergyBudget answer() {
        return EnergyBudget.of(demand, policy);
    }
}
