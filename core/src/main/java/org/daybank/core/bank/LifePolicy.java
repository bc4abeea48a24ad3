package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when the life of a bank is told.
 *
 * @param lifePerTenKelvin share of the calendar life that is left for each 10 K that the cells are over 25 °C
 * @param projectLife time that the system is to serve
 */
@RecordBuilder
public record LifePolicy(
        @Bounds(minimum = "0.2", maximum = "1", sensible = "lead-acid 0.5, lithium 0.6–1")
        @Assumed(
                value = "leadAcid 0.5, lithium 1",
                source =
                        "lead-acid lasts half as long for each 10 K, as customary with IEEE 1361; lithium as its sheet says")
        RatioByFamily lifePerTenKelvin,

        @Bounds(minimum = "1 a", maximum = "60 a", sensible = "15–25 a")
        @Assumed(value = "20 a", source = "life of the modules")
        TimeSpan projectLife)
        implements LifePolicyBuilder.With {
    private static final LifePolicy STANDARD = Defaults.of(LifePolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public LifePolicy {
        Validation.of(LifePolicy.class, lifePerTenKelvin, projectLife).done();
    }

    /** The cited defaults. */
    public static LifePolicy standard() {
        return STANDARD;
    }
}
