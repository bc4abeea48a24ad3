package org.daybank.core.simulation;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Ratio;

/**
 * Cycles within a course of ups and downs, by ASTM E1049-85, 5.4.4: pairs of reversals that close are whole cycles, what is
 * left over counts half.
 */
final class Rainflow {
    private static final int TENTHS = 10;

    /** A range that passes a tenth by no more than this is no larger than the tenth. */
    private static final double ROUNDING = 1e-9;

    private final double[] reversals;
    private final double[] countsByTenth = new double[TENTHS];
    private final double[] rangesByTenth = new double[TENTHS];
    private int held;

    private Rainflow(int most) {
        this.reversals = new double[most];
    }

    /** Counts the cycles of a course between 0 and 1 by their range in tenths: up to 0.1, over 0.1 up to 0.2, and so on. */
    static List<CycleCount> byTenth(double[] course) {
        Rainflow flow = new Rainflow(course.length);
        for (int i = 0; i < course.length; i++) {
            if (i == course.length - 1 || i == 0 || turns(course, i)) {
                flow.take(course[i]);
            }
        }
        flow.countRest();
        return IntStream.range(0, TENTHS).mapToObj(flow::inTenth).toList();
    }

    private CycleCount inTenth(int tenth) {
        double cycles = countsByTenth[tenth];
        return new CycleCount(
                Ratio.of((tenth + 1) / (double) TENTHS),
                cycles,
                cycles == 0 ? Ratio.ZERO : Ratio.of(rangesByTenth[tenth] / cycles));
    }

    /** Whether the course turns at a point; where it rests, at the last point of the rest. */
    private static boolean turns(double[] course, int i) {
        double next = course[i + 1] - course[i];
        int j = i - 1;
        while (j > 0 && course[j] == course[i]) {
            j--;
        }
        return (course[i] - course[j]) * next < 0;
    }

    private void take(double reversal) {
        reversals[held] = reversal;
        held++;
        while (held >= 3) {
            double latest = Math.abs(reversals[held - 1] - reversals[held - 2]);
            double before = Math.abs(reversals[held - 2] - reversals[held - 3]);
            if (latest < before) {
                return;
            }
            if (held == 3) {
                count(before, 0.5);
                reversals[0] = reversals[1];
                reversals[1] = reversals[2];
                held = 2;
            } else {
                count(before, 1);
                reversals[held - 3] = reversals[held - 1];
                held -= 2;
            }
        }
    }

    private void countRest() {
        for (int i = 1; i < held; i++) {
            count(Math.abs(reversals[i] - reversals[i - 1]), 0.5);
        }
    }

    private void count(double range, double cycles) {
        if (range > 0) {
            int tenth = (int) Math.ceil(range * TENTHS - ROUNDING) - 1;
            int within = Math.max(0, Math.min(TENTHS - 1, tenth));
            countsByTenth[within] += cycles;
            rangesByTenth[within] += range * cycles;
        }
    }
}
