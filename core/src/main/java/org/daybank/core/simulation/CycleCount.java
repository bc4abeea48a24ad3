package org.daybank.core.simulation;

import org.daybank.core.quantity.Ratio;

/**
 * Cycles of a range, counted by the rainflow method of ASTM E1049.
 *
 * @param upTo largest range, as a share of the capacity; the smallest is the one before
 * @param cycles how many; halves count
 * @param meanRange of these; zero when there are none
 */
public record CycleCount(Ratio upTo, double cycles, Ratio meanRange) {}
