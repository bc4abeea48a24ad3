package org.daybank.core.wiring;

import org.daybank.core.quantity.Current;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
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
        @Bounds(minimum = "1", maximum = "1000") int count,

        @Bounds(minimum = "0.1 A", maximum = "200 A", sensible = "15–30 A")
        Current seriesFuse,

        @Bounds(minimum = "0 A", maximum = "100 kA")
        @Assumed(value = "0 A", source = "the controller lets nothing flow back")
        Current backfeed) {
    /**
     * Validates the strings.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public ParallelStrings {
        backfeed = Defaults.otherwise(backfeed, ParallelStrings.class, "backfeed");
        Validation.of(ParallelStrings.class, count, seriesFuse, backfeed).done();
    }
}
