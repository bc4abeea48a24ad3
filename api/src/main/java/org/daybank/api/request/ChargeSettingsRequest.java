package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.bank.ChargePolicy;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.schema.Validation;

/**
 * Which set-points charge a bank well?
 *
 * @param facts the bank
 * @param policy what is assumed
 */
public record ChargeSettingsRequest(@Inline ChargeSettings.Facts facts, ChargePolicy policy) {
    /** Refuses what is missing or out of range. */
    public ChargeSettingsRequest {
        Validation.of(ChargeSettingsRequest.class, facts, policy).done();
    }

    /** Asks the library. */
    public ChargeSettings answer() {
        return ChargeSettings.of(facts, policy);
    }
}
