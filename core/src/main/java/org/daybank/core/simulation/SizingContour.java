package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * The pairs of array and bank with which loads lack something no more often than asked: nothing smaller on offer does.
 *
 * @param asked loss-of-load probability
 * @param points in the order of the sizes that were given
 */
public record SizingContour(Ratio asked, List<Point> points) {
    /**
     * The least bank for an array, or the least array for a bank.
     *
     * @param array power of its modules at standard test conditions; absent when none on offer is large enough for the bank
     * @param bank what it holds; absent when none on offer is large enough for the array
     * @param lossOfLoadProbability with both; absent with either
     */
    public record Point(
            @Nullable Power array,
            @Nullable Energy bank,
            @Nullable Ratio lossOfLoadProbability) {}

    /** Keeps a copy. */
    public SizingContour {
        points = List.copyOf(points);
    }
}
