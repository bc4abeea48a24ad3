package org.daybank.core.simulation;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;

/**
 * The bank with which an array lets no load lack anything.
 *
 * @param array power of its modules at standard test conditions
 * @param bank what the bank holds, at the current that the loads draw
 * @param sustained whether the bank is as full at the end of the years as it was at their beginning; otherwise the loads live on
 *     what it held at first, and no bank lasts for good
 */
public record ZeroLossBank(Power array, Energy bank, boolean sustained) {}
