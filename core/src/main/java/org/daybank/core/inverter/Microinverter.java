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
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

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
        Power power,

        @Assumed(value = "single", source = "most feed one phase")
        Phases phases,

        @Assumed(value = "230 V", source = "IEC 60038") Voltage outputVoltage,
        @Assumed(source = "50 Hz and 60 Hz") List<Frequency> frequencies,

        @Assumed(value = "1", source = "one for each module")
        Integer modulesOnEach,

        Power maximumModulePower,
        Voltage maximumInputVoltage,
        Voltage trackingLowest,
        Voltage trackingHighest,
        Current maximumInputCurrent,

        @Assumed(source = "maximumInputCurrent · 1.25") Current maximumShortCircuitCurrent,

        @Assumed(value = "48", source = "no limit of the trunk cable stated")
        Integer mostOnBranch,

        @Assumed(value = "0.96", source = "typical data sheets, weighted")
        Ratio efficiency,

        @Assumed(value = "60 Cel", source = "typical data sheets")
        Temperature fullPowerUpTo,

        @Assumed(value = "-2 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        Money price)
        implements GridInverter, MicroinverterBuilder.With {
    private static final double BRIGHT_SUN = 1.25;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or the sheet contradicts itself
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
        Validation checks = new Validation()
                .within("modulesOnEach", modulesOnEach, 1, 8)
                .required("maximumModulePower", maximumModulePower)
                .above("maximumModulePower", maximumModulePower, Power.ZERO)
                .required("maximumInputCurrent", maximumInputCurrent)
                .above("maximumInputCurrent", maximumInputCurrent, Current.ZERO)
                .above("maximumShortCircuitCurrent", maximumShortCircuitCurrent, Current.ZERO)
                .within("mostOnBranch", mostOnBranch, 1, 200);
        InputVoltages.check(checks, maximumInputVoltage, trackingLowest, trackingHighest);
        GridOutput.check(checks, model, power, outputVoltage, frequencies, efficiency, fullPowerUpTo, derating, price);
        checks.done();
        frequencies = List.copyOf(frequencies);
        maximumShortCircuitCurrent =
                maximumShortCircuitCurrent == null ? maximumInputCurrent.times(BRIGHT_SUN) : maximumShortCircuitCurrent;
    }
}
