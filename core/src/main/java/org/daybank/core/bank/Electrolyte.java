package org.daybank.core.bank;

import java.util.List;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.working.Table;

/** The acid of lead-acid cells, which thins as they discharge and then freezes the sooner. */
final class Electrolyte {
    /** Specific gravity of a full and of an empty cell; between them it falls in proportion to the depth. */
    private static final double FULL = 1.27;

    private static final double EMPTY = 1.10;

    private static final List<double[]> POINTS =
            Table.resource(Electrolyte.class, "freezing-points.csv").rows().stream()
                    .map(row -> new double[] {
                        row.value(Double.class, "specificGravity"), row.value(Double.class, "freezing_Cel")
                    })
                    .toList();

    private Electrolyte() {}

    /**
     * Returns the freezing point at a depth of discharge, linear between the published points.
     *
     * @param depth from 0
     */
    static Temperature freezingPoint(Ratio depth) {
        double gravity = Math.max(EMPTY, FULL - (FULL - EMPTY) * depth.fraction());
        int i = 0;
        while (POINTS.get(i + 1)[0] < gravity) {
            i++;
        }
        double[] below = POINTS.get(i);
        double[] above = POINTS.get(i + 1);
        return Temperature.celsius(below[1] + (gravity - below[0]) / (above[0] - below[0]) * (above[1] - below[1]));
    }
}
