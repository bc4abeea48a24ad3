package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
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
        Irradiance irradiance,

        @Assumed(value = "25 Cel", source = "standard test conditions")
        Temperature cell,

        @Assumed(value = "1", source = "one of them") Integer count)
        implements ModuleInSunBuilder.With {
    private static final Irradiance BRIGHTEST = Irradiance.wattsPerSquareMetre(1500);
    private static final int MOST = 100;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public ModuleInSun {
        cell = Defaults.otherwise(cell, ModuleInSun.class, "cell");
        count = Defaults.otherwise(count, ModuleInSun.class, "count");
        new Validation()
                .required("name", name)
                .required("module", module)
                .required("irradiance", irradiance)
                .within("irradiance", irradiance, Irradiance.ZERO, BRIGHTEST)
                .within("cell", cell, Temperature.celsius(-60), Temperature.celsius(100))
                .within("count", count, 1, MOST)
                .done();
    }
}
