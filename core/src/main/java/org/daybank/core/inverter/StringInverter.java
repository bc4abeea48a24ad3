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
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of an inverter that feeds strings of modules into the grid.
 *
 * @param model its code
 * @param power continuous AC power
 * @param phases of the service that one unit feeds
 * @param outputVoltage of the service that it is made for, from line to neutral
 * @param frequencies that it can follow
 * @param maximumInputVoltage open-circuit voltage that destroys it when exceeded
 * @param trackingLowest lower edge of the voltages between which it finds the array's best point
 * @param trackingHighest upper edge
 * @param trackers inputs that find a best point of their own
 * @param maximumInputCurrent operating current of each tracker
 * @param maximumShortCircuitCurrent of the strings on each tracker
 * @param maximumArrayPower modules that it may be connected to, at standard test conditions; absent when the sheet sets no
 *     limit
 * @param efficiency weighted over the loads of a year
 * @param fullPowerUpTo hottest air at which it gives its continuous power
 * @param derating change of its power for each kelvin above; zero or negative
 * @param price of one
 */
@RecordBuilder
public record StringInverter(
        String model,
        Power power,

        @Assumed(value = "single", source = "small units have one phase")
        Phases phases,

        @Assumed(value = "230 V", source = "IEC 60038") Voltage outputVoltage,
        @Assumed(source = "50 Hz and 60 Hz") List<Frequency> frequencies,
        Voltage maximumInputVoltage,
        Voltage trackingLowest,
        Voltage trackingHighest,

        @Assumed(value = "1", source = "none but one stated")
        Integer trackers,

        Current maximumInputCurrent,

        @Assumed(source = "maximumInputCurrent · 1.25") Current maximumShortCircuitCurrent,

        @Nullable Power maximumArrayPower,

        @Assumed(value = "0.97", source = "typical data sheets, weighted")
        Ratio efficiency,

        @Assumed(value = "45 Cel", source = "typical data sheets")
        Temperature fullPowerUpTo,

        @Assumed(value = "-2 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        Money price)
        implements GridInverter, StringInverterBuilder.With {
    private static final double BRIGHT_SUN = 1.25;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or the sheet contradicts itself
     */
    public StringInverter {
        phases = Defaults.otherwise(phases, StringInverter.class, "phases");
        outputVoltage = Defaults.otherwise(outputVoltage, StringInverter.class, "outputVoltage");
        frequencies = frequencies == null ? List.of(Frequency.hertz(50), Frequency.hertz(60)) : frequencies;
        trackers = Defaults.otherwise(trackers, StringInverter.class, "trackers");
        efficiency = Defaults.otherwise(efficiency, StringInverter.class, "efficiency");
        fullPowerUpTo = Defaults.otherwise(fullPowerUpTo, StringInverter.class, "fullPowerUpTo");
        derating = Defaults.otherwise(derating, StringInverter.class, "derating");
        Validation checks = new Validation()
                .required("maximumInputCurrent", maximumInputCurrent)
                .above("maximumInputCurrent", maximumInputCurrent, Current.ZERO)
                .atLeast("maximumShortCircuitCurrent", maximumShortCircuitCurrent, maximumInputCurrent)
                .within("trackers", trackers, 1, 32)
                .above("maximumArrayPower", maximumArrayPower, Power.ZERO);
        InputVoltages.check(checks, maximumInputVoltage, trackingLowest, trackingHighest);
        GridOutput.check(checks, model, power, outputVoltage, frequencies, efficiency, fullPowerUpTo, derating, price);
        checks.done();
        frequencies = List.copyOf(frequencies);
        maximumShortCircuitCurrent =
                maximumShortCircuitCurrent == null ? maximumInputCurrent.times(BRIGHT_SUN) : maximumShortCircuitCurrent;
    }
}
