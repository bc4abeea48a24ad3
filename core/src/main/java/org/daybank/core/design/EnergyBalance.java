package org.daybank.core.design;

import java.util.Optional;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.PathComparison;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.sun.MonthlySun;

/**
 * Need and yield of a system on a bank.
 *
 * @param sun irradiation on the array, by month
 * @param budget energy that leaves the bank, the power that the selected parts draw included
 * @param monthlyBalance need and yield by month
 * @param mpptGain yield by maximum power point tracking compared with charging at the bank's own voltage, by month
 * @param recovery time to recharge the bank from its deepest discharge in the design month; empty when the array has no
 *     surplus then
 */
public record EnergyBalance(
        MonthlySun sun,
        EnergyBudget budget,
        ArraySize monthlyBalance,
        PathComparison mpptGain,
        Optional<TimeSpan> recovery) {}
