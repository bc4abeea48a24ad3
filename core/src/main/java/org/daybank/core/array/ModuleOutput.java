package org.daybank.core.array;

import java.util.function.DoubleBinaryOperator;
import org.daybank.core.array.kernel.DiodeKernel;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.SunClass;
import org.jspecify.annotations.Nullable;

/**
 * What a module gives under a sky, by one of the yield models; made once for a module and then asked for every site and bank.
 * Cells are as warm as Ross says; light on the back counts with the front's. Unchangeable.
 */
public final class ModuleOutput {
    private final PvModule module;
    private final @Nullable DiodeKernel diode;
    private final double bothSides;

    private ModuleOutput(PvModule module, @Nullable DiodeKernel diode) {
        this.module = module;
        this.diode = diode;
        this.bothSides = module.bifacialGain().onePlus();
    }

    /**
     * The output of a module by a model.
     *
     * @throws org.daybank.core.schema.InvalidInput when no circuit fits the data sheet
     */
    public static ModuleOutput of(PvModule module, YieldModel model) {
        return switch (model) {
            case SINGLE_DIODE -> new ModuleOutput(module, SingleDiode.of(module).kernel());
            case PROPORTIONAL -> new ModuleOutput(module, null);
        };
    }

    /** The module. */
    PvModule module() {
        return module;
    }

    /** The largest power; in proportion, {@code P · G / (1 kW/m²) · (1 + γ · (T_cell − 25 °C))}. */
    double bestWatts(SunClass sun) {
        return bestWatts(
                sun.irradiance().wattsPerSquareMetre() * bothSides,
                CellTemperature.of(module, sun).celsius());
    }

    private double bestWatts(double irradiance, double cellCelsius) {
        return diode == null
                ? module.power().watts()
                        * irradiance
                        / 1000
                        * ModuleExtremes.powerAt(module, Temperature.celsius(cellCelsius))
                                .fraction()
                : diode.maximumPowerWatts(irradiance, cellCelsius);
    }

    /** The current at a voltage; in proportion, {@code I_mp · G / (1 kW/m²)} whatever the voltage. */
    double amperes(double volts, SunClass sun) {
        return amperes(
                volts,
                sun.irradiance().wattsPerSquareMetre() * bothSides,
                CellTemperature.of(module, sun).celsius());
    }

    private double amperes(double volts, double irradiance, double cellCelsius) {
        return diode == null
                ? module.maximumPowerCurrent().amperes() * irradiance / 1000
                : Math.max(0, diode.amperes(volts, irradiance, cellCelsius));
    }

    /**
     * The largest power of one module in every hour: what gets through the cover drives it, what falls on the plane warms it.
     *
     * @param sun on its plane
     * @param air temperature in °C, as long as the year
     */
    public HourlySeries best(HourlySun sun, HourlySeries air) {
        return HourlySeries.watts(each(sun, air, this::bestWatts));
    }

    /** The current of one module in every hour when it is held at a voltage. */
    public HourlySeries current(Voltage voltage, HourlySun sun, HourlySeries air) {
        double volts = voltage.volts();
        return HourlySeries.amperes(each(sun, air, (irradiance, cell) -> amperes(volts, irradiance, cell)));
    }

    private double[] each(HourlySun sun, HourlySeries air, DoubleBinaryOperator output) {
        double rise = CellTemperature.kelvinsPerWattPerSquareMetre(module);
        double[] found = new double[air.size()];
        for (int hour = 0; hour < found.length; hour++) {
            double effective = sun.effective().at(hour);
            if (effective > 0) {
                double cell = air.at(hour) + rise * sun.planeOfArray().at(hour);
                found[hour] = output.applyAsDouble(effective * bothSides, cell);
            }
        }
        return found;
    }
}
