package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * Modules of a string that are alike and get the same light.
 *
 * @param name by which the answer speaks of them
 * @param module their data sheet
 * @param irradiance on each; zero in the dark
 * @param cell temperature of their cells
 * @param count how many of them
 */
@RecordBuilder
public record ModuleInSun(
        String name,
        PvModule module,
        @Bounds(minimum = "0 W/m2", maximum = "1500 W/m2") Irradiance irradiance,

        @Bounds(minimum = "-60 Cel", maximum = "100 Cel")
        @Assumed(value = "25 Cel", source = "standard test conditions")
        Temperature cell,

        @Bounds(minimum = "1", maximum = "100") @Assumed(value = "1", source = "one of them")
        Integer count)
        implements ModuleInSunBuilder.With {

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public ModuleInSun {
        cell = Defaults.otherwise(cell, ModuleInSun.class, "cell");
        count = Defaults.otherwise(count, ModuleInSun.class, "count");
        Validation.of(ModuleInSun.class, name, module, irradiance, cell, count).done();
    }
}
