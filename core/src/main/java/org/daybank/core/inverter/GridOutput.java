package org.daybank.core.inverter;

import java.util.List;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/** Validation what the data sheets of all {@link GridInverter}s say of their AC side. */
final class GridOutput {
    private GridOutput() {}

    static void check(
            Validation checks,
            @Nullable String model,
            @Nullable Power power,
            Voltage outputVoltage,
            List<Frequency> frequencies,
            Ratio efficiency,
            Temperature fullPowerUpTo,
            TemperatureCoefficient derating,
            @Nullable Money price) {
        checks.required("model", model)
                .required("power", power)
                .within("power", power, Power.watts(10), Power.kilowatts(1000))
                .within("outputVoltage", outputVoltage, Voltage.volts(90), Voltage.volts(400))
                .notEmpty("frequencies", frequencies)
                .within("efficiency", efficiency, Ratio.of(0.5), Ratio.ONE)
                .within("fullPowerUpTo", fullPowerUpTo, Temperature.celsius(0), Temperature.celsius(90))
                .atMost("derating", derating, TemperatureCoefficient.ZERO)
                .required("price", price);
    }
}
