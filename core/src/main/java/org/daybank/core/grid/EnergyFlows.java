package org.daybank.core.grid;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;

/**
 * Where energy came from and went to in a time. {@code load = selfUse + imported} and {@code array = selfUse + exported +
 * clipped}.
 *
 * @param load what the loads took
 * @param array what the array offered
 * @param selfUse of the array, taken by the loads in the same hour
 * @param imported from the grid
 * @param exported to the grid
 * @param clipped over what the inverters give or the grid takes
 */
public record EnergyFlows(Energy load, Energy array, Energy selfUse, Energy imported, Energy exported, Energy clipped) {
    /** Nothing flowed. */
    static final EnergyFlows NONE =
            new EnergyFlows(Energy.ZERO, Energy.ZERO, Energy.ZERO, Energy.ZERO, Energy.ZERO, Energy.ZERO);

    /** Both times together. */
    public EnergyFlows plus(EnergyFlows other) {
        return new EnergyFlows(
                load.plus(other.load),
                array.plus(other.array),
                selfUse.plus(other.selfUse),
                imported.plus(other.imported),
                exported.plus(other.exported),
                clipped.plus(other.clipped));
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public EnergyFlows dividedBy(double divisor) {
        return new EnergyFlows(
                load.dividedBy(divisor),
                array.dividedBy(divisor),
                selfUse.dividedBy(divisor),
                imported.dividedBy(divisor),
                exported.dividedBy(divisor),
                clipped.dividedBy(divisor));
    }

    /** Share of what the array gave that was used at once; nothing where it gave nothing. */
    public Ratio selfUseShare() {
        Energy given = selfUse.plus(exported);
        return given.wattHours() > 0 ? Ratio.of(selfUse.dividedBy(given)) : Ratio.ZERO;
    }

    /** Share of the loads' energy that the array gave directly; nothing where there was no load. */
    public Ratio loadCovered() {
        return load.wattHours() > 0 ? Ratio.of(selfUse.dividedBy(load)) : Ratio.ZERO;
    }
}
