package org.daybank.core.array;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;
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
        return Combinators.combine(
                        Arbitraries.of(36, 48, 54, 60, 66, 72),
                        between(0, 1).list().ofSize(7))
                .as((cells, at) -> new Sheet(
                        cells,
                        along(0.56, 0.75, at.get(0)),
                        along(0.2, 18, at.get(1)),
                        along(0.78, 0.86, at.get(2)),
                        along(0.90, 0.96, at.get(3)),
                        along(-0.36, -0.24, at.get(4)),
                        along(0.04, 0.06, at.get(5)),
                        along(-0.50, -0.34, at.get(6))));
    }

    /** Everything that the data sheet's constructor lets through, sensible or not. */
    static Arbitrary<Sheet> accepted() {
        return Combinators.combine(
                        Arbitraries.of(4, 20, 72, 96), between(0, 1).list().ofSize(7))
                .as((cells, at) -> new Sheet(
                        cells,
                        along(0.46, 0.99, at.get(0)),
                        along(0.5, 20, at.get(1)),
                        along(0.501, 0.999, at.get(2)),
                        along(0.501, 0.999, at.get(3)),
                        along(-0.59, -0.11, at.get(4)),
                        along(0, 0.19, at.get(5)),
                        along(-0.79, -0.11, at.get(6))));
    }

    private static double along(double least, double most, double share) {
        return least + (most - least) * share;
    }

    /** Evenly spread, in ten thousand steps. */
    static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.integers()
                .between(0, 10_000)
                .withDistribution(RandomDistribution.uniform())
                .map(step -> along(least, most, step / 10_000.0));
    }
}
