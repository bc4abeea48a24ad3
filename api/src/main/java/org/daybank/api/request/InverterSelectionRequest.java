package org.daybank.api.request;

import java.util.List;
import org.daybank.api.wire.Inline;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.InverterNeed;
import org.daybank.core.inverter.InverterPolicy;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Which inverters carry the loads, start them and stand on the bank?
 *
 * @param need what is asked of the inverter
 * @param inverters inverters on offer; those of the service when absent
 * @param policy what is assumed
 */
public record InverterSelectionRequest(
        @Inline InverterNeed need,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Nullable
        List<Inverter> inverters,

        InverterPolicy policy) {
    /** Refuses what is missing or out of range. */
    public InverterSelectionRequest {
        Validation.of(InverterSelectionRequest.class, need, inverters, policy).done();
        inverters = inverters == null ? null : List.copyOf(inverters);
    }

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public InverterSelection answer(Catalog onOffer) {
        return InverterSelection.of(need, inverters == null ? onOffer.inverters() : inverters, policy);
    }
}
