package org.daybank.core.simulation;

import java.util.Arrays;

/**
 * The least step of many ladders at which a figure has fallen to each of some levels, all ladders halved together. On every
 * ladder the figure must fall, or stay, from step to step.
 */
final class Bisection {
    /** The figures of many pairs of a ladder and a step. */
    interface Figures {
        /** In the order of the pairs. */
        double[] at(int[] ladders, int[] steps, int count);
    }

    private final int steps;
    private final double[] levels;

    /** Greatest step known to be too low, and least known to do; one beyond the last step when none is known. */
    private final int[][] fails;

    private final int[][] does;
    private final double[][] figure;

    private Bisection(int ladders, int steps, double[] levels) {
        this.steps = steps;
        this.levels = levels;
        fails = new int[ladders][levels.length];
        does = new int[ladders][levels.length];
        figure = new double[ladders][levels.length];
        for (int ladder = 0; ladder < ladders; ladder++) {
            Arrays.fill(fails[ladder], -1);
            Arrays.fill(does[ladder], steps);
        }
    }

    static Bisection of(int ladders, int steps, double[] levels, Figures figures) {
        Bisection all = new Bisection(ladders, steps, levels);
        int[] ladder = new int[ladders * levels.length];
        int[] step = new int[ladders * levels.length];
        for (int count = all.next(ladder, step); count > 0; count = all.next(ladder, step)) {
            double[] found = figures.at(ladder, step, count);
            for (int i = 0; i < count; i++) {
                all.learn(ladder[i], step[i], found[i]);
            }
        }
        return all;
    }

    /** The middle of what is still open, no step of a ladder twice. */
    private int next(int[] ladder, int[] step) {
        int count = 0;
        for (int i = 0; i < does.length; i++) {
            int first = count;
            for (int level = 0; level < levels.length; level++) {
                int middle = (fails[i][level] + does[i][level]) >>> 1;
                if (does[i][level] - fails[i][level] > 1 && !asked(step, first, count, middle)) {
                    ladder[count] = i;
                    step[count] = middle;
                    count++;
                }
            }
        }
        return count;
    }

    private static boolean asked(int[] step, int first, int end, int middle) {
        for (int i = first; i < end; i++) {
            if (step[i] == middle) {
                return true;
            }
        }
        return false;
    }

    private void learn(int ladder, int step, double found) {
        for (int level = 0; level < levels.length; level++) {
            if (found > levels[level]) {
                fails[ladder][level] = Math.max(fails[ladder][level], step);
            } else if (step < does[ladder][level]) {
                does[ladder][level] = step;
                figure[ladder][level] = found;
            }
        }
    }

    /** Whether any step of a ladder does. */
    boolean any(int ladder, int level) {
        return does[ladder][level] < steps;
    }

    /** The least step that does. */
    int least(int ladder, int level) {
        return does[ladder][level];
    }

    /** The figure there. */
    double figure(int ladder, int level) {
        return figure[ladder][level];
    }
}
