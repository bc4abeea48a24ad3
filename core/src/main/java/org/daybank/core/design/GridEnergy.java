package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.sun.MonthlySun;

/**
 * Use and yield of an array that feeds the grid.
 *
 * @param sun irradiation on the array, by month
 * @param budget energy of the loads
 * @param dailyYield energy into the grid on the mean day of each month, from January, ageing and clipping included
 * @param yearlyYield energy into the grid in a year
 * @param yearlyUse energy of the loads in a year
 * @param coverage yearly yield over yearly use; empty when the loads use nothing
 */
public record GridEnergy(
        MonthlySun sun,
        EnergyBudget budget,
        List<Energy> dailyYield,
        Energy yearlyYield,
        Energy yearlyUse,
        Optional<Ratio> coverage) {
    /** Keeps a copy. */
    public GridEnergy {
        dailyYield = List.copyOf(dailyYield);
    }
}
