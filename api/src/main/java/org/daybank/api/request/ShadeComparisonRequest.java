package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.array.ShadeComparison;
import org.daybank.core.array.ShadePolicy;
import org.daybank.core.array.StringInSun;
import org.daybank.core.schema.Validation;

/**
 * What do unlike modules, or modules in unlike light, give in one string and what each by itself?
 *
 * @param string the modules
 * @param policy what is assumed
 */
public record ShadeComparisonRequest(@Inline StringInSun string, ShadePolicy policy) {
    /** Refuses what is missing or out of range. */
    public ShadeComparisonRequest {
        Validation.of(ShadeComparisonRequest.class, string, policy).done();
    }

    /** Asks the library. */
    public ShadeComparison answer() {
        return ShadeComparison.of(string, policy);
    }
}
