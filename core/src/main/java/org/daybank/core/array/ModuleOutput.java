package org.daybank.core.array;

import org.daybank.core.array.kernel.DiodeKernel;
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
     * @throws org.daybank.core.working.InvalidInput when no circuit fits the data sheet
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
        double irradiance = sun.irradiance().wattsPerSquareMetre() * bothSides;
        return diode == null
                ? module.power().watts()
                        * irradiance
                        / 1000
                        * ModuleExtremes.powerAt(module, CellTemperature.of(module, sun))
                                .fraction()
                : diode.maximumPowerWatts(
                        irradiance, CellTemperature.of(module, sun).celsius());
    }

    /** The current at a voltage; in proportion, {@code I_mp · G / (1 kW/m²)} whatever the voltage. */
    double amperes(double volts, SunClass sun) {
        double irradiance = sun.irradiance().wattsPerSquareMetre() * bothSides;
        return diode == null
                ? module.maximumPowerCurrent().amperes() * irradiance / 1000
                : Math.max(
                        0,
                        diode.amperes(
                                volts,
                                irradiance,
                                CellTemperature.of(module, sun).celsius()));
    }
}
