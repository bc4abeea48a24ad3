package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with when the life of a bank is told.
 *
 * @param lifePerTenKelvin share of the calendar life that is left for each 10 K that the cells are over 25 °C
 * @param projectLife time that the system is to serve
 */
@RecordBuilder
public record LifePolicy(
        @Assumed(
                value = "leadAcid 0.5, lithium 1",
                least = "0.2",
                most = "1",
                sensible = "lead-acid 0.5, lithium 0.6–1",
                source =
                        "lead-acid lasts half as long for each 10 K, as customary with IEEE 1361; lithium as its sheet says")
        RatioByFamily lifePerTenKelvin,

        @Assumed(value = "20 a", least = "1 a", most = "60 a", sensible = "15–25 a", source = "life of the modules")
        TimeSpan projectLife)
        implements LifePolicyBuilder.With {
    private static final LifePolicy STANDARD = Policies.standard(LifePolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public LifePolicy {
        Policies.check(LifePolicy.class, lifePerTenKelvin, projectLife);
    }

    /** The cited defaults. */
    public static LifePolicy standard() {
        return STANDARD;
    }
}
