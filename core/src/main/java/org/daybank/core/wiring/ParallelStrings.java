package org.daybank.core.wiring;

import org.daybank.core.quantity.Current;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * The strings beside which a string lies, which feed it backwards when it fails.
 *
 * @param count strings in parallel, this one included
 * @param seriesFuse largest fuse that the module's data sheet allows in series with it
 * @param backfeed current that bank or inverter can feed into a faulty string
 */
public record ParallelStrings(
        int count,
        Current seriesFuse,

        @Assumed(value = "0 A", source = "the controller lets nothing flow back")
        Current backfeed) {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or can never be right
     */
    public ParallelStrings {
        backfeed = Defaults.otherwise(backfeed, ParallelStrings.class, "backfeed");
        new Validation()
                .within("count", count, 1, 1000)
                .required("seriesFuse", seriesFuse)
                .within("seriesFuse", seriesFuse, Current.amperes(0.1), Current.amperes(200))
                .within("backfeed", backfeed, Current.ZERO, Current.kiloamperes(100))
                .done();
    }
}
