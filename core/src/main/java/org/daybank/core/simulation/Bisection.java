package org.daybank.core.simulation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * The least step of many ladders at which a figure has fallen to each of some levels, all ladders halved together. On every
 * ladder the figure must fall, or stay, from step to step.
 */
final class Bisection {
    /** The figures of pairs of a ladder and a step, in the order of the pairs. */
    interface Figures {
        double[] at(int[] ladders, int[] steps);
    }

    /** What is to be said of a ladder and its least step that does, below 0 when none does. */
    interface Say {
        SizingContour.Point point(int ladder, int step);
    }

    private final int steps;
    private final List<Ratio> levels;

    /** By ladder and level: greatest step known to be too low, and least known to do; one beyond the last when none is known. */
    private final int[][] fails;

    private final int[][] does;

    /** Figures that were found, by ladder and step. */
    private final Map<Long, Double> figures = new HashMap<>();

    private Bisection(int ladders, int steps, List<Ratio> levels) {
        this.steps = steps;
        this.levels = List.copyOf(levels);
        fails = new int[ladders][levels.size()];
        does = new int[ladders][levels.size()];
        for (int ladder = 0; ladder < ladders; ladder++) {
            Arrays.fill(fails[ladder], -1);
            Arrays.fill(does[ladder], steps);
        }
    }

    static Bisection of(int ladders, int steps, List<Ratio> levels, Figures figures) {
        Bisection all = new Bisection(ladders, steps, levels);
        for (long[] next = all.next(); next.length > 0; next = all.next()) {
            int[] ladder = Arrays.stream(next).mapToInt(all::ladder).toArray();
            int[] step = Arrays.stream(next).mapToInt(all::step).toArray();
            double[] found = figures.at(ladder, step);
            for (int i = 0; i < next.length; i++) {
                all.figures.put(next[i], found[i]);
                all.learn(ladder[i], step[i], found[i]);
            }
        }
        return all;
    }

    private long place(int ladder, int step) {
        return (long) ladder * steps + step;
    }

    private int ladder(long place) {
        return (int) (place / steps);
    }

    private int step(long place) {
        return (int) (place % steps);
    }

    /** The middles of what is still open, none twice. */
    private long[] next() {
        return IntStream.range(0, does.length)
                .boxed()
                .flatMapToLong(ladder -> IntStream.range(0, levels.size())
                        .filter(level -> does[ladder][level] - fails[ladder][level] > 1)
                        .mapToLong(level -> place(ladder, (fails[ladder][level] + does[ladder][level]) >>> 1))
                        .distinct())
                .toArray();
    }

    private void learn(int ladder, int step, double found) {
        for (int level = 0; level < levels.size(); level++) {
            if (found > levels.get(level).fraction()) {
                fails[ladder][level] = Math.max(fails[ladder][level], step);
            } else {
                does[ladder][level] = Math.min(does[ladder][level], step);
            }
        }
    }

    /** The figure at a step that was looked at; absent below the first step. */
    @Nullable
    Ratio figure(int ladder, int step) {
        Double found = figures.get(place(ladder, step));
        return step < 0 || found == null ? null : Ratio.of(found);
    }

    /** For each level what is to be said of every ladder. */
    List<SizingContour> contours(Say say) {
        return IntStream.range(0, levels.size())
                .mapToObj(level -> new SizingContour(
                        levels.get(level),
                        IntStream.range(0, does.length)
                                .mapToObj(ladder ->
                                        say.point(ladder, does[ladder][level] < steps ? does[ladder][level] : -1))
                                .toList()))
                .toList();
    }
}
