package org.daybank.core.generator;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

/**
 * Modules that would be added instead of running an engine.
 *
 * @param pricePerModule of one more, with its share of mounting, cable and controller
 * @param moduleYield what one brings to the bank in the whole month that lacks most, not on a day of it
 * @param life years over which they are paid off
 * @param interest a year
 */
@RecordBuilder
public record MoreModules(
        Money pricePerModule,
        Energy moduleYield,

        @Assumed(
                value = "20 a",
                least = "1 a",
                most = "50 a",
                sensible = "15–25 a",
                source = "warranty of most modules")
        TimeSpan life,

        @Assumed(value = "0.04", least = "0", most = "0.5", sensible = "0.02–0.08", source = "a small loan, about")
        Ratio interest)
        implements MoreModulesBuilder.With {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or out of range
     */
    public MoreModules {
        life = Policies.otherwise(life, MoreModules.class, "life");
        interest = Policies.otherwise(interest, MoreModules.class, "interest");
        new Validation()
                .required("pricePerModule", pricePerModule)
                .that(
                        pricePerModule == null || pricePerModule.minorUnits() >= 0,
                        "pricePerModule",
                        "outOfRange",
                        "pricePerModule must not be negative")
                .required("moduleYield", moduleYield)
                .atLeast("moduleYield", moduleYield, Energy.wattHours(1))
                .done();
        Policies.check(MoreModules.class, pricePerModule, moduleYield, life, interest);
    }

    /** What one unit of price costs in each year of the life: {@code i / (1 − (1 + i)^−n)}, and {@code 1/n} without interest. */
    double annuityFactor() {
        double rate = interest.fraction();
        return rate == 0 ? 1 / life.years() : rate / -Math.expm1(-life.years() * Math.log1p(rate));
    }
}
