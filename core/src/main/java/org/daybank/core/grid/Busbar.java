package org.daybank.core.grid;

import org.daybank.core.quantity.Current;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * The panel that an inverter feeds.
 *
 * @param rating of its busbar
 * @param main rating of the overcurrent device that feeds it from the grid
 * @param inverterCurrent continuous output of all inverters that feed it, on one line
 */
public record Busbar(
        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA", sensible = "63–400 A")
        Current rating,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA", sensible = "25–200 A")
        Current main,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") Current inverterCurrent) {
    /**
     * Validates the panel.
     *
     * @throws org.daybank.core.schema.InvalidInput when a current is missing or outside its bounds
     */
    public Busbar {
        Validation.of(Busbar.class, rating, main, inverterCurrent).done();
    }
}
