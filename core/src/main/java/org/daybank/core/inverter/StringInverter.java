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
        @Bounds(minimum = "10 W", maximum = "1000 kW") Power power,

        @Assumed(value = "single", source = "small units have one phase")
        Phases phases,

        @Bounds(minimum = "90 V", maximum = "400 V") @Assumed(value = "230 V", source = "IEC 60038")
        Voltage outputVoltage,

        @Bounds(minimum = "45 Hz", maximum = "65 Hz", minimumItems = 1, maximumItems = 10)
        @Assumed(source = "50 Hz and 60 Hz")
        List<Frequency> frequencies,

        @Bounds(minimum = "10 V", maximum = "1500 V") Voltage maximumInputVoltage,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V")
        Voltage trackingLowest,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V")
        Voltage trackingHighest,

        @Bounds(minimum = "1", maximum = "32") @Assumed(value = "1", source = "none but one stated")
        Integer trackers,

        @Bounds(exclusiveMinimum = "0 A", maximum = "1 kA") Current maximumInputCurrent,

        @Bounds(exclusiveMinimum = "0 A", maximum = "2 kA") @Assumed(source = "maximumInputCurrent · 1.25") @Nullable
        Current maximumShortCircuitCurrent,

        @Bounds(exclusiveMinimum = "0 W", maximum = "10000 kW") @Nullable
        Power maximumArrayPower,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.95–0.985")
        @Assumed(value = "0.97", source = "typical data sheets, weighted")
        Ratio efficiency,

        @Bounds(minimum = "0 Cel", maximum = "90 Cel") @Assumed(value = "45 Cel", source = "typical data sheets")
        Temperature fullPowerUpTo,

        @Bounds(minimum = "-20 %/K", maximum = "0 %/K") @Assumed(value = "-2 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        @Bounds(minimum = "0", maximum = "10000000000") Money price)
        implements GridInverter, StringInverterBuilder.With, Resolvable<StringInverter.Resolved> {
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
    public StringInverter {
        phases = Defaults.otherwise(phases, StringInverter.class, "phases");
        outputVoltage = Defaults.otherwise(outputVoltage, StringInverter.class, "outputVoltage");
        frequencies = frequencies == null ? List.of(Frequency.hertz(50), Frequency.hertz(60)) : frequencies;
        trackers = Defaults.otherwise(trackers, StringInverter.class, "trackers");
        efficiency = Defaults.otherwise(efficiency, StringInverter.class, "efficiency");
        fullPowerUpTo = Defaults.otherwise(fullPowerUpTo, StringInverter.class, "fullPowerUpTo");
        derating = Defaults.otherwise(derating, StringInverter.class, "derating");
        InputVoltages.validate(
                        Validation.of(
                                StringInverter.class,
                                model,
                                power,
                                phases,
                                outputVoltage,
                                frequencies,
                                maximumInputVoltage,
                                trackingLowest,
                                trackingHighest,
                                trackers,
                                maximumInputCurrent,
                                maximumShortCircuitCurrent,
                                maximumArrayPower,
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
