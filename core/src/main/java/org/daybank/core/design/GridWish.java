package org.daybank.core.design;

import org.daybank.core.grid.Tariff;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * How much an array is to feed into the grid: so many modules, so much power, or a share of what the loads use in a year; the
 * first that is given counts.
 *
 * @param modules how many; absent when not fixed
 * @param power of all modules at standard test conditions, at the least; absent when not fixed
 * @param coverage yearly energy of the array over that of the loads, at the least
 * @param tariff what the grid operator charges and pays; absent when no bill is asked
 */
public record GridWish(
        @Bounds(minimum = "1", maximum = "10000") @Nullable Integer modules,

        @Bounds(minimum = "1 W", maximum = "10000 kW") @Nullable
        Power power,

        @Bounds(minimum = "0.01", maximum = "10", sensible = "0.5–1")
        @Assumed(value = "1", source = "as much in a year as the loads use: what net metering credits at the most")
        Ratio coverage,

        @Nullable Tariff tariff) {
    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value can never be right
     */
    public GridWish {
        coverage = Defaults.otherwise(coverage, GridWish.class, "coverage");
        Validation.of(GridWish.class, modules, power, coverage, tariff).done();
    }

    /** As much in a year as the loads use. */
    public static GridWish standard() {
        return new GridWish(null, null, Defaults.otherwise(null, GridWish.class, "coverage"), null);
    }
}
