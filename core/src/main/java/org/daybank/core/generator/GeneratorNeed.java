package org.daybank.core.generator;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What an engine generator must charge and carry, and where it stands.
 *
 * @param chargingVoltage of the bank while it is charged, as a rule its absorption voltage
 * @param maximumChargeCurrent most that the bank takes
 * @param chargerEfficiency of the charger between AC and bank
 * @param chargerPowerFactor of the charger at its AC input
 * @param concurrentLoads most that AC loads ask while it runs
 * @param meanLoads what AC loads ask on average while it runs, at most concurrentLoads; the bank is spared them
 * @param elevation of the place above sea level
 * @param hottestAir around the engine at work
 * @param chargerInput most that the charger takes from AC; absent, as much as the bank's limit calls for
 * @param monthlyShortfall what the sun leaves missing at the bank, twelve from January; absent when it is not known
 */
@RecordBuilder
public record GeneratorNeed(
        @Bounds(minimum = "10 V", maximum = "1500 V", sensible = "14.4 V, 28.8 V or 57.6 V")
        Voltage chargingVoltage,

        @Bounds(minimum = "0.1 A", maximum = "100 kA") Current maximumChargeCurrent,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.85–0.94")
        @Assumed(value = "0.9", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Bounds(minimum = "0.4", maximum = "1", sensible = "0.7 plain, 0.95 or more with correction")
        @Assumed(value = "0.9", source = "between a plain rectifier and one with power-factor correction")
        Ratio chargerPowerFactor,

        @Bounds(minimum = "0 W", maximum = "1000 kW") @Assumed(value = "0 W", source = "it only charges")
        Power concurrentLoads,

        @Bounds(minimum = "0 W", maximum = "1000 kW")
        @Assumed(value = "0 W", source = "none counted, so that its hours come out rather too long")
        Power meanLoads,

        @Bounds(minimum = "-430 m", maximum = "5500 m") @Assumed(value = "0 m", source = "sea level")
        Length elevation,

        @Bounds(minimum = "-20 Cel", maximum = "60 Cel") @Assumed(value = "40 Cel", source = "no temperature stated")
        Temperature hottestAir,

        @Bounds(exclusiveMinimum = "0 W", maximum = "10000 kW") @Nullable
        Power chargerInput,

        @Bounds(minimum = "0 Wh", maximum = "1000000 kWh", minimumItems = 12, maximumItems = 12) @Nullable
        List<Energy> monthlyShortfall)
        implements GeneratorNeedBuilder.With {
    /**
     * Validates the need.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or contradicts itself
     */
    public GeneratorNeed {
        chargerEfficiency = Defaults.otherwise(chargerEfficiency, GeneratorNeed.class, "chargerEfficiency");
        chargerPowerFactor = Defaults.otherwise(chargerPowerFactor, GeneratorNeed.class, "chargerPowerFactor");
        concurrentLoads = Defaults.otherwise(concurrentLoads, GeneratorNeed.class, "concurrentLoads");
        meanLoads = Defaults.otherwise(meanLoads, GeneratorNeed.class, "meanLoads");
        elevation = Defaults.otherwise(elevation, GeneratorNeed.class, "elevation");
        hottestAir = Defaults.otherwise(hottestAir, GeneratorNeed.class, "hottestAir");
        Validation.of(
                        GeneratorNeed.class,
                        chargingVoltage,
                        maximumChargeCurrent,
                        chargerEfficiency,
                        chargerPowerFactor,
                        concurrentLoads,
                        meanLoads,
                        elevation,
                        hottestAir,
                        chargerInput,
                        monthlyShortfall)
                .notAbove("meanLoads", meanLoads, "concurrentLoads", concurrentLoads)
                .done();
        monthlyShortfall = monthlyShortfall == null ? null : List.copyOf(monthlyShortfall);
    }

    /** What is missing in a month, from 0; nothing where it is not known. */
    Energy shortfall(int month) {
        return monthlyShortfall == null ? Energy.ZERO : monthlyShortfall.get(month);
    }

    /** Into the bank: what its limit allows, or what the charger gives where that is less. */
    Current chargeCurrent() {
        if (chargerInput == null) {
            return maximumChargeCurrent;
        }
        Current given = chargerInput.times(chargerEfficiency).dividedBy(chargingVoltage);
        return given.compareTo(maximumChargeCurrent) < 0 ? given : maximumChargeCurrent;
    }
}
