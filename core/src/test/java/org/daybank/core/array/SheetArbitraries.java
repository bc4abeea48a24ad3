package org.daybank.core.array;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Builders;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;

/** Random data sheets of crystalline silicon modules, from a pocket panel to a large one. */
final class SheetArbitraries {
    /**
     * What a sheet is made of.
     *
     * @param voltsPerCell 0.56 V (old multicrystalline) to 0.75 V (heterojunction)
     * @param voltageShare V_mp / V_oc
     * @param currentShare I_mp / I_sc
     * @param voltagePercent −0.36 to −0.24 %/K
     * @param currentPercent 0.04 to 0.06 %/K
     * @param powerPercent −0.50 to −0.34 %/K
     */
    record Sheet(
            int cells,
            double voltsPerCell,
            double amperes,
            double voltageShare,
            double currentShare,
            double voltagePercent,
            double currentPercent,
            double powerPercent) {

        PvModule module() {
            Voltage open = Voltage.volts(cells * voltsPerCell);
            Voltage best = open.times(voltageShare);
            Current current = Current.amperes(amperes * currentShare);
            Power power = best.times(current);
            return PvModuleBuilder.builder()
                    .model("random")
                    .power(power)
                    .openCircuitVoltage(open)
                    .shortCircuitCurrent(Current.amperes(amperes))
                    .maximumPowerVoltage(best)
                    .maximumPowerCurrent(current)
                    .openCircuitVoltageCoefficient(TemperatureCoefficient.percentPerKelvin(voltagePercent))
                    .shortCircuitCurrentCoefficient(TemperatureCoefficient.percentPerKelvin(currentPercent))
                    .powerCoefficient(TemperatureCoefficient.percentPerKelvin(powerPercent))
                    .cellsInSeries(cells)
                    .systemVoltage(Voltage.volts(1500))
                    .seriesFuse(Current.amperes(30))
                    .price(Money.of("100", "EUR"))
                    .build();
        }
    }

    private SheetArbitraries() {}

    static Arbitrary<Sheet> sheets() {
        return Builders.withBuilder(() -> new double[7])
                .use(between(0.56, 0.75))
                .inSetter((a, v) -> a[0] = v)
                .use(between(0.2, 18))
                .inSetter((a, v) -> a[1] = v)
                .use(between(0.78, 0.86))
                .inSetter((a, v) -> a[2] = v)
                .use(between(0.90, 0.96))
                .inSetter((a, v) -> a[3] = v)
                .use(between(-0.36, -0.24))
                .inSetter((a, v) -> a[4] = v)
                .use(between(0.04, 0.06))
                .inSetter((a, v) -> a[5] = v)
                .use(between(-0.50, -0.34))
                .inSetter((a, v) -> a[6] = v)
                .build()
                .flatMap(a -> Arbitraries.of(36, 48, 54, 60, 66, 72)
                        .map(cells -> new Sheet(cells, a[0], a[1], a[2], a[3], a[4], a[5], a[6])));
    }

    static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.doubles().between(least, most).ofScale(4);
    }
}
