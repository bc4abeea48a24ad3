package org.daybank.core.inverter;

import java.util.List;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.working.Caution;
import org.daybank.core.working.Working;

/**
 * Both ways to feed an array into the grid side by side.
 *
 * @param extremes the module's voltages at the site, from which those of the strings follow
 * @param stringInverters modules in strings, a few inverters
 * @param microinverters an inverter behind each module, or each few
 */
public record GridInverterSelection(
        ModuleExtremes extremes, StringInverterSelection stringInverters, MicroinverterSelection microinverters) {
    /** Holds both kinds against the array and the grid. */
    public static GridInverterSelection of(
            GridService grid,
            GridArray array,
            List<StringInverter> stringInverters,
            List<Microinverter> microinverters,
            GridPolicy policy) {
        return new GridInverterSelection(
                array.extremes(),
                StringInverterSelection.of(grid, array, stringInverters, policy),
                MicroinverterSelection.of(grid, array, microinverters, policy));
    }

    /** What can hurt someone in a system made of what fits. */
    public List<Caution> cautions() {
        return GridCautions.of(this);
    }

    /** The steps to the module's voltages, as one would write them on paper. */
    public Working working() {
        return extremes.working();
    }
}
