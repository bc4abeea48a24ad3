package org.daybank.core.simulation;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * An engine generator that starts when the bank is low and stops when it is high. It carries the loads meanwhile and charges
 * with what is left.
 *
 * @param power that it gives at the site, heat and altitude reckoned in
 * @param startBelow state of charge at which it starts
 * @param stopAbove state of charge at which it stops; more than startBelow
 * @param chargerEfficiency of the charger between its AC and the bank
 * @param litresPerKilowattHour fuel for each kilowatt-hour made
 * @param litresPerHourPerKilowatt fuel for each hour and kilowatt of its power, made or not
 */
@RecordBuilder
public record EngineRule(
        @Bounds(exclusiveMinimum = "0 W", maximum = "10000 kW")
        Power power,

        @Bounds(minimum = "0", maximum = "0.95", sensible = "0.3–0.5")
        @Assumed(value = "0.4", source = "before the loads are cut off")
        Ratio startBelow,

        @Bounds(minimum = "0.05", maximum = "0.99", sensible = "0.7–0.9")
        @Assumed(value = "0.8", source = "the last fifth charges slowly and is left to the array")
        Ratio stopAbove,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.85–0.94")
        @Assumed(value = "0.9", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Bounds(minimum = "0.05", maximum = "2")
        @Assumed(value = "0.246", source = "typical curve of small diesel engines")
        Double litresPerKilowattHour,

        @Bounds(minimum = "0", maximum = "1")
        @Assumed(value = "0.081", source = "typical curve of small diesel engines")
        Double litresPerHourPerKilowatt)
        implements EngineRuleBuilder.With {
    /**
     * Validates every value.
     *
     * @throws org.daybank.core.schema.InvalidInput when one is absent or out of range, or it would stop before it starts
     */
    public EngineRule {
        startBelow = Defaults.otherwise(startBelow, EngineRule.class, "startBelow");
        stopAbove = Defaults.otherwise(stopAbove, EngineRule.class, "stopAbove");
        chargerEfficiency = Defaults.otherwise(chargerEfficiency, EngineRule.class, "chargerEfficiency");
        litresPerKilowattHour = Defaults.otherwise(litresPerKilowattHour, EngineRule.class, "litresPerKilowattHour");
        litresPerHourPerKilowatt =
                Defaults.otherwise(litresPerHourPerKilowatt, EngineRule.class, "litresPerHourPerKilowatt");
        Validation.of(
                        EngineRule.class,
                        power,
                        startBelow,
                        stopAbove,
                        chargerEfficiency,
                        litresPerKilowattHour,
                        litresPerHourPerKilowatt)
                .exceeds("stopAbove", stopAbove, "startBelow", startBelow)
                .done();
    }
}
