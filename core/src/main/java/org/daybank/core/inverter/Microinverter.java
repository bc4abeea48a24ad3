package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of an inverter that sits behind a module, or behind a few with an input for each, and feeds the grid.
 *
 * @param model its code
 * @param power continuous AC power
 * @param phases of the service that one unit feeds
 * @param outputVoltage of the service that it is made for, from line to neutral
 * @param frequencies that it can follow
 * @param modulesOnEach inputs, each for one module and with a best point of its own
 * @param maximumModulePower largest module on an input, at standard test conditions
 * @param maximumInputVoltage open-circuit voltage that destroys it when exceeded
 * @param trackingLowest lower edge of the voltages between which it finds a module's best point
 * @param trackingHighest upper edge
 * @param maximumInputCurrent operating current of each input; more is not harmful but lost
 * @param maximumShortCircuitCurrent of the module on each input
 * @param mostOnBranch units that its trunk cable carries
 * @param efficiency weighted over the loads of a year
 * @param fullPowerUpTo hottest air at which it gives its continuous power; on a roof the air is hotter than elsewhere
 * @param derating change of its power for each kelvin above; zero or negative
 * @param price of one
 */
@RecordBuilder
public record Microinverter(
        String model,
        @Bounds(minimum = "10 W", maximum = "1000 kW") Power power,

        @Assumed(value = "single", source = "most feed one phase")
        Phases phases,

        @Bounds(minimum = "90 V", maximum = "400 V") @Assumed(value = "230 V", source = "IEC 60038")
        Voltage outputVoltage,

        @Bounds(minimum = "45 Hz", maximum = "65 Hz", minimumItems = 1, maximumItems = 10)
        @Assumed(source = "50 Hz and 60 Hz")
        List<Frequency> frequencies,

        @Bounds(minimum = "1", maximum = "8") @Assumed(value = "1", source = "one for each module")
        Integer modulesOnEach,

        @Bounds(exclusiveMinimum = "0 W", maximum = "10 kW") Power maximumModulePower,

        @Bounds(minimum = "10 V", maximum = "1500 V") Voltage maximumInputVoltage,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V")
        Voltage trackingLowest,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V")
        Voltage trackingHighest,

        @Bounds(exclusiveMinimum = "0 A", maximum = "1 kA") Current maximumInputCurrent,

        @Bounds(exclusiveMinimum = "0 A", maximum = "2 kA") @Assumed(source = "maximumInputCurrent · 1.25") @Nullable
        Current maximumShortCircuitCurrent,

        @Bounds(minimum = "1", maximum = "200") @Assumed(value = "48", source = "no limit of the trunk cable stated")
        Integer mostOnBranch,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.95–0.985")
        @Assumed(value = "0.96", source = "typical data sheets, weighted")
        Ratio efficiency,

        @Bounds(minimum = "0 Cel", maximum = "90 Cel") @Assumed(value = "60 Cel", source = "typical data sheets")
        Temperature fullPowerUpTo,

        @Bounds(minimum = "-20 %/K", maximum = "0 %/K") @Assumed(value = "-2 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        @Bounds(minimum = "0", maximum = "10000000000") Money price)
        implements GridInverter, MicroinverterBuilder.With, Resolvable<Microinverter.Resolved> {
    private static final double BRIGHT_SUN = 1.25;

    /**
     * The components whose defaults follow from others.
     *
     * @param maximumShortCircuitCurrent of each input
     */
    public record Resolved(Current maximumShortCircuitCurrent) {}

    /**
     * Validates the data sheet.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or contradicts itself
     */
    public Microinverter {
        phases = Defaults.otherwise(phases, Microinverter.class, "phases");
        outputVoltage = Defaults.otherwise(outputVoltage, Microinverter.class, "outputVoltage");
        frequencies = frequencies == null ? List.of(Frequency.hertz(50), Frequency.hertz(60)) : frequencies;
        modulesOnEach = Defaults.otherwise(modulesOnEach, Microinverter.class, "modulesOnEach");
        mostOnBranch = Defaults.otherwise(mostOnBranch, Microinverter.class, "mostOnBranch");
        efficiency = Defaults.otherwise(efficiency, Microinverter.class, "efficiency");
        fullPowerUpTo = Defaults.otherwise(fullPowerUpTo, Microinverter.class, "fullPowerUpTo");
        derating = Defaults.otherwise(derating, Microinverter.class, "derating");
        InputVoltages.validate(
                        Validation.of(
                                Microinverter.class,
                                model,
                                power,
                                phases,
                                outputVoltage,
                                frequencies,
                                modulesOnEach,
                                maximumModulePower,
                                maximumInputVoltage,
                                trackingLowest,
                                trackingHighest,
                                maximumInputCurrent,
                                maximumShortCircuitCurrent,
                                mostOnBranch,
                                efficiency,
                                fullPowerUpTo,
                                derating,
                                price),
                        maximumInputVoltage,
                        trackingLowest,
                        trackingHighest)
                .notBelow(
                        "maximumShortCircuitCurrent",
                        maximumShortCircuitCurrent,
                        "maximumInputCurrent",
                        maximumInputCurrent)
                .done();
        frequencies = List.copyOf(frequencies);
    }

    @Override
    public Resolved resolved() {
        return new Resolved(
                maximumShortCircuitCurrent == null
                        ? maximumInputCurrent.times(BRIGHT_SUN)
                        : maximumShortCircuitCurrent);
    }
}
