package org.daybank.core.design;

import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;

/**
 * A simulated design that no cheaper one is as available as.
 *
 * @param price of its parts
 * @param availability share of the hours in which every load is supplied in full
 * @param arrayToLoadRatio that its array was sized with
 * @param autonomy that its bank was sized with
 * @param nominalVoltage what its bus is called
 * @param modules how many
 * @param batteries how many
 */
public record FrontierPoint(
        Money price,
        Ratio availability,
        Ratio arrayToLoadRatio,
        TimeSpan autonomy,
        Voltage nominalVoltage,
        int modules,
        int batteries) {}
