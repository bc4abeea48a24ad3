package org.daybank.core.simulation;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

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
        Power power,

        @Assumed(
                value = "0.4",
                least = "0",
                most = "0.95",
                sensible = "0.3–0.5",
                source = "before the loads are cut off")
        Ratio startBelow,

        @Assumed(
                value = "0.8",
                least = "0.05",
                most = "0.99",
                sensible = "0.7–0.9",
                source = "the last fifth charges slowly and is left to the array")
        Ratio stopAbove,

        @Assumed(value = "0.9", least = "0.5", most = "1", sensible = "0.85–0.94", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Assumed(value = "0.246", least = "0.05", most = "2", source = "typical curve of small diesel engines")
        Double litresPerKilowattHour,

        @Assumed(value = "0.081", least = "0", most = "1", source = "typical curve of small diesel engines")
        Double litresPerHourPerKilowatt)
        implements EngineRuleBuilder.With {
    /**
     * Validation every value.
     *
     * @throws org.daybank.core.working.InvalidInput when one is absent or out of range, or it would stop before it starts
     */
    public EngineRule {
        startBelow = Policies.otherwise(startBelow, EngineRule.class, "startBelow");
        stopAbove = Policies.otherwise(stopAbove, EngineRule.class, "stopAbove");
        chargerEfficiency = Policies.otherwise(chargerEfficiency, EngineRule.class, "chargerEfficiency");
        litresPerKilowattHour = Policies.otherwise(litresPerKilowattHour, EngineRule.class, "litresPerKilowattHour");
        litresPerHourPerKilowatt =
                Policies.otherwise(litresPerHourPerKilowatt, EngineRule.class, "litresPerHourPerKilowatt");
        Ratio start = startBelow;
        Ratio stop = stopAbove;
        new Validation()
                .required("power", power)
                .above("power", power, Power.ZERO)
                .done();
        Policies.check(
                EngineRule.class,
                power,
                startBelow,
                stopAbove,
                chargerEfficiency,
                litresPerKilowattHour,
                litresPerHourPerKilowatt);
        new Validation()
                .that(
                        stop.compareTo(start) > 0,
                        "stopAbove",
                        "inconsistent",
                        () -> "stopAbove must be more than startBelow %s but is %s".formatted(start, stop))
                .done();
    }
}
