package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of a charge controller. What it leaves out stays null; {@link #resolved()} returns what that follows to.
 *
 * @param model its code
 * @param kind its family
 * @param busVoltages what the banks are called that it charges: 12, 24, 48 V
 * @param maximumInputVoltage open-circuit voltage that destroys it when exceeded
 * @param minimumInputVoltage array voltage under which it does not work
 * @param headroom what the array's voltage must lie above the charging voltage
 * @param maximumInputCurrent short-circuit current of the array that it stands
 * @param maximumInputPower rated power of the array that it may be connected to; absent when the sheet sets no limit
 * @param outputCurrent rated charging current
 * @param efficiency of the conversion; one for controllers that pass the current through
 * @param selfConsumption power that it takes from the bank all day
 * @param chemistries that it can be set up for
 * @param fullOutputUpTo hottest air at which it gives its rated current
 * @param derating change of the rated current for each kelvin above; zero or negative
 * @param mostInParallel controllers that may charge one bank together
 * @param loadOutputCurrent what its load output carries, if it has one
 * @param functions what it can do besides
 * @param price of one
 */
@RecordBuilder
public record ChargeController(
        String model,
        ControllerKind kind,

        @Bounds(minimum = "12 V", maximum = "48 V", minimumItems = 1, maximumItems = 10)
        List<Voltage> busVoltages,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V")
        Voltage maximumInputVoltage,

        @Bounds(minimum = "0 V", maximum = "1500 V") @Assumed(value = "0 V", source = "none stated")
        Voltage minimumInputVoltage,

        @Bounds(minimum = "0 V", maximum = "100 V")
        @Assumed(value = "1 V", source = "drop across the switch of a direct controller")
        Voltage headroom,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") @Assumed(source = "equal to outputCurrent") @Nullable
        Current maximumInputCurrent,

        @Bounds(exclusiveMinimum = "0 W", maximum = "1000 kW") @Nullable
        Power maximumInputPower,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") Current outputCurrent,

        @Bounds(minimum = "0.5", maximum = "1") @Assumed(value = "0.96", source = "typical data sheets")
        Ratio efficiency,

        @Bounds(minimum = "0 W", maximum = "500 W") @Assumed(value = "1 W", source = "typical data sheets")
        Power selfConsumption,

        @Bounds(minimumItems = 1, maximumItems = 4) List<Chemistry> chemistries,

        @Bounds(minimum = "0 Cel", maximum = "80 Cel") @Assumed(value = "40 Cel", source = "typical data sheets")
        Temperature fullOutputUpTo,

        @Bounds(minimum = "-20 %/K", maximum = "0 %/K") @Assumed(value = "-2 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        @Bounds(minimum = "1", maximum = "64")
        @Assumed(value = "4", source = "customary limit without a common control")
        Integer mostInParallel,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") @Assumed(source = "equal to outputCurrent") @Nullable
        Current loadOutputCurrent,

        @Bounds(maximumItems = 8) @Assumed(source = "none stated")
        List<ControllerFunction> functions,

        @Bounds(minimum = "0", maximum = "10000000000") Money price)
        implements ChargeControllerBuilder.With, Resolvable<ChargeController.Resolved> {
    /**
     * The components whose defaults follow from others.
     *
     * @param maximumInputCurrent as given, or the output current
     * @param loadOutputCurrent as given, or the output current
     */
    public record Resolved(Current maximumInputCurrent, Current loadOutputCurrent) {}

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range, or the sheet contradicts itself
     */
    public ChargeController {
        minimumInputVoltage = Defaults.otherwise(minimumInputVoltage, ChargeController.class, "minimumInputVoltage");
        headroom = Defaults.otherwise(headroom, ChargeController.class, "headroom");
        efficiency = Defaults.otherwise(efficiency, ChargeController.class, "efficiency");
        selfConsumption = Defaults.otherwise(selfConsumption, ChargeController.class, "selfConsumption");
        fullOutputUpTo = Defaults.otherwise(fullOutputUpTo, ChargeController.class, "fullOutputUpTo");
        derating = Defaults.otherwise(derating, ChargeController.class, "derating");
        mostInParallel = Defaults.otherwise(mostInParallel, ChargeController.class, "mostInParallel");
        functions = functions == null ? List.of() : functions;
        Validation.of(
                        ChargeController.class,
                        model,
                        kind,
                        busVoltages,
                        maximumInputVoltage,
                        minimumInputVoltage,
                        headroom,
                        maximumInputCurrent,
                        maximumInputPower,
                        outputCurrent,
                        efficiency,
                        selfConsumption,
                        chemistries,
                        fullOutputUpTo,
                        derating,
                        mostInParallel,
                        loadOutputCurrent,
                        functions,
                        price)
                .exceeds("maximumInputVoltage", maximumInputVoltage, "minimumInputVoltage", minimumInputVoltage)
                .done();
        busVoltages = List.copyOf(busVoltages);
        chemistries = List.copyOf(chemistries);
        functions = List.copyOf(functions);
    }

    @Override
    public Resolved resolved() {
        return new Resolved(
                maximumInputCurrent == null ? outputCurrent : maximumInputCurrent,
                loadOutputCurrent == null ? outputCurrent : loadOutputCurrent);
    }

    /** What it gives in air this hot. */
    public Current outputCurrentIn(Temperature air) {
        TemperatureDifference above =
                air.compareTo(fullOutputUpTo) > 0 ? air.minus(fullOutputUpTo) : TemperatureDifference.ZERO;
        return outputCurrent.times(Math.max(0, 1 + derating.times(above).fraction()));
    }
}
