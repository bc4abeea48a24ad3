package org.daybank.core.inverter;

import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.sun.IrradianceDistribution;

/**
 * The array that is to feed the grid.
 *
 * @param extremes the module and its voltages at the site
 * @param modules how many of it, all to be connected
 * @param whenNew what dirt, mismatch and wiring leave of a new array's power
 * @param sunshine the year's sunshine on the array
 */
public record GridArray(
        ModuleExtremes extremes,

        @Bounds(minimum = "1", maximum = "" + GridArray.MOST_MODULES)
        int modules,

        @Bounds(exclusiveMinimum = "0", maximum = "1") Ratio whenNew,
        IrradianceDistribution sunshine) {
    /** Largest number of modules of one array. */
    public static final int MOST_MODULES = 10_000;

    private static final Temperature STANDARD_CELL = Temperature.celsius(25);

    /**
     * Validates the array.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public GridArray {
        Validation.of(GridArray.class, extremes, modules, whenNew, sunshine).done();
    }

    /** The module. */
    public PvModule module() {
        return extremes.module();
    }

    /** Power of all modules at standard test conditions. */
    public Power power() {
        return module().power().times(modules);
    }

    /**
     * Maximum-power voltage of a module on the coldest morning, {@code V_mp · (1 + (γ − α) · (T_low − 25 °C))}: what the upper
     * edge of a tracking window is held against.
     */
    public Voltage coldestMaximumPower() {
        double cold = module().powerCoefficient()
                .minus(module().shortCircuitCurrentCoefficient())
                .times(extremes.recordLow().minus(STANDARD_CELL))
                .fraction();
        return module().maximumPowerVoltage().times(1 + cold);
    }

    /** Operating current of a module in full sun, light on the back included. */
    Current operatingCurrent() {
        return module().maximumPowerCurrent().times(module().bifacialGain().onePlus());
    }

    /** Short-circuit current of a module to reckon with, brighter sun and light on the back included. */
    Current shortCircuitCurrent(GridPolicy policy) {
        return module().shortCircuitCurrent()
                .times(module().bifacialGain().onePlus())
                .times(policy.shortCircuitFactor());
    }
}
