package org.daybank.core.simulation;

/**
 * Cycles within a course of ups and downs, by ASTM E1049-85, 5.4.4: pairs of reversals that close are whole cycles, what is
 * left over counts half.
 */
final class Rainflow {
    /** A range that passes a tenth by no more than this is no larger than the tenth. */
    private static final double ROUNDING = 1e-9;

    private final double[] reversals;
    private final double[] countsByTenth;
    private int held;

    private Rainflow(int most, double[] countsByTenth) {
        this.reversals = new double[most];
        this.countsByTenth = countsByTenth;
    }

    /**
     * Counts the cycles of a course between 0 and 1 by their range in tenths.
     *
     * @return ten counts: ranges up to 0.1, over 0.1 up to 0.2, and so on
     */
    static double[] byTenth(double[] course) {
        Rainflow flow = new Rainflow(course.length, new double[10]);
        for (int i = 0; i < course.length; i++) {
            if (i == course.length - 1 || i == 0 || turns(course, i)) {
                flow.take(course[i]);
            }
        }
        flow.countRest();
        return flow.countsByTenth;
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
            int tenth = (int) Math.ceil(range * 10 - ROUNDING) - 1;
            countsByTenth[Math.max(0, Math.min(9, tenth))] += cycles;
        }
    }
}
