package org.daybank.core.grid;

import org.daybank.core.quantity.Current;
import org.daybank.core.schema.Validation;

/**
 * The panel that an inverter feeds.
 *
 * @param rating of its busbar
 * @param main rating of the overcurrent device that feeds it from the grid
 * @param inverterCurrent continuous output of all inverters that feed it, on one line
 */
public record Busbar(Current rating, Current main, Current inverterCurrent) {
    /**
     * Validation the currents.
     *
     * @throws org.daybank.core.schema.InvalidInput when one is missing or not above zero
     */
    public Busbar {
        new Validation()
                .required("rating", rating)
                .above("rating", rating, Current.ZERO)
                .required("main", main)
                .above("main", main, Current.ZERO)
                .required("inverterCurrent", inverterCurrent)
                .above("inverterCurrent", inverterCurrent, Current.ZERO)
                .done();
    }
}
