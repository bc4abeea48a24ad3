package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
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
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of a charge controller.
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
        List<Voltage> busVoltages,
        Voltage maximumInputVoltage,

        @Assumed(value = "0 V", source = "none stated") Voltage minimumInputVoltage,

        @Assumed(value = "1 V", source = "drop across the switch of a direct controller")
        Voltage headroom,

        @Assumed(source = "equal to outputCurrent") Current maximumInputCurrent,
        @Nullable Power maximumInputPower,
        Current outputCurrent,

        @Assumed(value = "0.96", source = "typical data sheets")
        Ratio efficiency,

        @Assumed(value = "1 W", source = "typical data sheets")
        Power selfConsumption,

        List<Chemistry> chemistries,

        @Assumed(value = "40 Cel", source = "typical data sheets")
        Temperature fullOutputUpTo,

        @Assumed(value = "-2 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        @Assumed(value = "4", source = "customary limit without a common control")
        Integer mostInParallel,

        @Assumed(source = "equal to outputCurrent") Current loadOutputCurrent,
        @Assumed(source = "none stated") List<ControllerFunction> functions,
        Money price)
        implements ChargeControllerBuilder.With {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or the sheet contradicts itself
     */
    public ChargeController {
        minimumInputVoltage = Defaults.otherwise(minimumInputVoltage, ChargeController.class, "minimumInputVoltage");
        headroom = Defaults.otherwise(headroom, ChargeController.class, "headroom");
        maximumInputCurrent = maximumInputCurrent == null ? outputCurrent : maximumInputCurrent;
        loadOutputCurrent = loadOutputCurrent == null ? outputCurrent : loadOutputCurrent;
        efficiency = Defaults.otherwise(efficiency, ChargeController.class, "efficiency");
        selfConsumption = Defaults.otherwise(selfConsumption, ChargeController.class, "selfConsumption");
        fullOutputUpTo = Defaults.otherwise(fullOutputUpTo, ChargeController.class, "fullOutputUpTo");
        derating = Defaults.otherwise(derating, ChargeController.class, "derating");
        mostInParallel = Defaults.otherwise(mostInParallel, ChargeController.class, "mostInParallel");
        functions = List.copyOf(Objects.requireNonNullElse(functions, List.of()));
        new Validation()
                .required("model", model)
                .required("kind", kind)
                .notEmpty("busVoltages", busVoltages)
                .eachWithin("busVoltages", busVoltages, Voltage.volts(12), Voltage.volts(48))
                .required("maximumInputVoltage", maximumInputVoltage)
                .above("maximumInputVoltage", maximumInputVoltage, Voltage.ZERO)
                .atLeast("minimumInputVoltage", minimumInputVoltage, Voltage.ZERO)
                .that(
                        maximumInputVoltage == null || minimumInputVoltage.compareTo(maximumInputVoltage) < 0,
                        "minimumInputVoltage",
                        ProblemCode.INCONSISTENT,
                        "minimumInputVoltage %s must be below maximumInputVoltage %s"
                                .formatted(minimumInputVoltage, maximumInputVoltage))
                .atLeast("headroom", headroom, Voltage.ZERO)
                .above("maximumInputCurrent", maximumInputCurrent, Current.ZERO)
                .above("maximumInputPower", maximumInputPower, Power.ZERO)
                .required("outputCurrent", outputCurrent)
                .above("outputCurrent", outputCurrent, Current.ZERO)
                .within("efficiency", efficiency, Ratio.of(0.5), Ratio.ONE)
                .within("selfConsumption", selfConsumption, Power.ZERO, Power.watts(500))
                .notEmpty("chemistries", chemistries)
                .within("fullOutputUpTo", fullOutputUpTo, Temperature.celsius(0), Temperature.celsius(80))
                .atMost("derating", derating, TemperatureCoefficient.ZERO)
                .within("mostInParallel", mostInParallel, 1, 64)
                .above("loadOutputCurrent", loadOutputCurrent, Current.ZERO)
                .required("price", price)
                .done();
        busVoltages = List.copyOf(busVoltages);
        chemistries = List.copyOf(chemistries);
    }

    /** What it gives in air this hot. */
    public Current outputCurrentIn(Temperature air) {
        TemperatureDifference above =
                air.compareTo(fullOutputUpTo) > 0 ? air.minus(fullOutputUpTo) : TemperatureDifference.ZERO;
        return outputCurrent.times(Math.max(0, 1 + derating.times(above).fraction()));
    }
}
