package org.daybank.core.array;

import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.site.Site;
import org.daybank.core.working.Working;

/**
 * The voltages of one module at the ends of its life outdoors, from which every string follows.
 *
 * @param module the module
 * @param recordLow coldest air; on the coldest morning the cells are as cold
 * @param hottestCell cells at 1000 W/m² in the hottest air
 * @param coldestOpenCircuit {@code V_oc · (1 + β · (T_low − 25 °C))}
 * @param hottestMaximumPower {@code V_mp · (1 + (γ − α) · (T_cell − 25 °C))} after ageing, with the coefficients γ of power
 *     and α of current
 */
public record ModuleExtremes(
        @NotRepeated PvModule module,
        Temperature recordLow,
        Temperature hottestCell,
        Voltage coldestOpenCircuit,
        Voltage hottestMaximumPower) {
    private static final Irradiance FULL_SUN = Irradiance.wattsPerSquareMetre(1000);
    private static final Temperature STANDARD_CELL = Temperature.celsius(25);

    /** The extremes of a module at a site. */
    public static ModuleExtremes of(PvModule module, Site site, ArrayPolicy policy) {
        Temperature hottestCell =
                CellTemperature.ross(site.resolved().recordHigh(), FULL_SUN, module.nominalOperatingCellTemperature());
        double cold = module.openCircuitVoltageCoefficient()
                .times(site.recordLow().minus(STANDARD_CELL))
                .fraction();
        TemperatureCoefficient voltageCoefficient =
                module.powerCoefficient().minus(module.shortCircuitCurrentCoefficient());
        double hot = voltageCoefficient.times(hottestCell.minus(STANDARD_CELL)).fraction();
        return new ModuleExtremes(
                module,
                site.recordLow(),
                hottestCell,
                module.openCircuitVoltage().times(1 + cold),
                module.maximumPowerVoltage().times(Math.max(0, 1 + hot)).times(policy.voltageAgeingFactor()));
    }

    /** The relative power of the module with cells at a temperature. */
    static Ratio powerAt(PvModule module, Temperature cell) {
        return Ratio.of(
                1 + module.powerCoefficient().times(cell.minus(STANDARD_CELL)).fraction());
    }

    /** Open-circuit voltage of a string on the coldest morning. */
    public Voltage coldestOpenCircuit(int series) {
        return coldestOpenCircuit.times(series);
    }

    /** Maximum-power voltage of a string in the hottest sun. */
    public Voltage hottestMaximumPower(int series) {
        return hottestMaximumPower.times(series);
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        return Working.builder()
                .step(
                        "coldest open-circuit voltage of a module",
                        "V = V_oc · (1 + β · (T_low − 25 °C))",
                        "IEC 62548-1",
                        coldestOpenCircuit,
                        "%s · (1 + %s · (%s − 25 °C))",
                        module.openCircuitVoltage(),
                        module.openCircuitVoltageCoefficient(),
                        recordLow)
                .step(
                        "hottest maximum-power voltage of a module",
                        "V = V_mp · (1 + (γ − α) · (T_cell − 25 °C)) · ageing",
                        "IEC 62548-1; cells by Ross",
                        hottestMaximumPower,
                        "%s at cells of %s",
                        module.maximumPowerVoltage(),
                        hottestCell)
                .build();
    }
}
