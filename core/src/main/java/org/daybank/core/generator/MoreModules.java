package org.daybank.core.generator;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

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
        @Bounds(minimum = "0", maximum = "10000000000") Money pricePerModule,

        @Bounds(minimum = "1 Wh", maximum = "1000 kWh", sensible = "10–80 kWh")
        Energy moduleYield,

        @Bounds(minimum = "1 a", maximum = "50 a", sensible = "15–25 a")
        @Assumed(value = "20 a", source = "warranty of most modules")
        TimeSpan life,

        @Bounds(minimum = "0", maximum = "0.5", sensible = "0.02–0.08")
        @Assumed(value = "0.04", source = "a small loan, about")
        Ratio interest)
        implements MoreModulesBuilder.With {
    /**
     * Validates the modules.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public MoreModules {
        life = Defaults.otherwise(life, MoreModules.class, "life");
        interest = Defaults.otherwise(interest, MoreModules.class, "interest");
        Validation.of(MoreModules.class, pricePerModule, moduleYield, life, interest)
                .done();
    }

    /** What one unit of price costs in each year of the life: {@code i / (1 − (1 + i)^−n)}, and {@code 1/n} without interest. */
    double annuityFactor() {
        double rate = interest.fraction();
        return rate == 0 ? 1 / life.years() : rate / -Math.expm1(-life.years() * Math.log1p(rate));
    }
}
