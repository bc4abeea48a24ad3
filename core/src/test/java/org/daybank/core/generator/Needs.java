package org.daybank.core.generator;

import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;

/** Needs that the tests of this room start from. */
final class Needs {
    private Needs() {}

    /** 80 A into 50 V through a charger of 80 % and a power factor of 0.8, 600 m up, 36 °C; lacks energy in two months. */
    static GeneratorNeed uphill() {
        return GeneratorNeedBuilder.builder()
                .chargingVoltage(Voltage.volts(50))
                .maximumChargeCurrent(Current.amperes(80))
                .chargerEfficiency(Ratio.of(0.8))
                .chargerPowerFactor(Ratio.of(0.8))
                .concurrentLoads(Power.watts(750))
                .meanLoads(Power.watts(250))
                .elevation(Length.metres(600))
                .hottestAir(Temperature.celsius(36))
                .monthlyShortfall(kilowattHours(42.5, 85, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0))
                .build();
    }

    /** So many amperes into 50 V without any loss, at sea level in cool air. */
    static GeneratorNeed lossless(double amperes) {
        return GeneratorNeedBuilder.builder()
                .chargingVoltage(Voltage.volts(50))
                .maximumChargeCurrent(Current.amperes(amperes))
                .chargerEfficiency(Ratio.ONE)
                .chargerPowerFactor(Ratio.ONE)
                .hottestAir(Temperature.celsius(20))
                .build();
    }

    static List<Energy> kilowattHours(double... months) {
        return Arrays.stream(months).mapToObj(Energy::kilowattHours).toList();
    }
}
