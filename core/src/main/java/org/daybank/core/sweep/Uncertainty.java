package org.daybank.core.sweep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.sweep.kernel.Sobol;

/**
 * What the uncertainty of the inputs of a sweep makes of its outputs.
 *
 * <p>Two independent samples of the inputs and their crossings, one input at a time, are taken from one shifted sequence of
 * Sobol: (inputs + 2) cases for each draw. First-order indices are those of Saltelli et al. 2010 (Computer Physics
 * Communications 181:259–270, table 2, line b), total indices those of Jansen 1999 (the same table, line f).
 *
 * @param draws how many points each of the two samples has
 * @param cases how often the calculator was asked
 * @param failed how many of the cases it refused; draws with such a case count in no index
 * @param outputs one for each output of the sweep
 */
public record Uncertainty(int draws, int cases, int failed, List<Spread> outputs) {
    /** Most cases for which the calculator is asked. */
    public static final int MOST_CASES = 50_000_000;

    /** Keeps a copy. */
    public Uncertainty {
        outputs = List.copyOf(outputs);
    }

    /**
     * How one output spreads. Numbers are in the unit of its column.
     *
     * @param output name of the output
     * @param unit of its numbers; empty when they have none
     * @param mean over both samples
     * @param deviation standard deviation
     * @param percentiles values below which so many hundredths lie
     * @param influences what each input has to do with it, in the order of the inputs
     */
    public record Spread(
            String output,
            String unit,
            double mean,
            double deviation,
            Percentiles percentiles,
            List<Influence> influences) {
        /** Keeps a copy. */
        public Spread {
            influences = List.copyOf(influences);
        }
    }

    /**
     * Values below which so many hundredths of the outcomes lie, interpolated between neighbours.
     *
     * @param p5 one in twenty lies below
     * @param p10 one in ten lies below
     * @param p25 a quarter lies below
     * @param p50 the median
     * @param p75 a quarter lies above
     * @param p90 one in ten lies above
     * @param p95 one in twenty lies above
     */
    public record Percentiles(double p5, double p10, double p25, double p50, double p75, double p90, double p95) {
        static Percentiles of(double[] sorted) {
            return new Percentiles(
                    at(sorted, 0.05),
                    at(sorted, 0.1),
                    at(sorted, 0.25),
                    at(sorted, 0.5),
                    at(sorted, 0.75),
                    at(sorted, 0.9),
                    at(sorted, 0.95));
        }

        private static double at(double[] sorted, double share) {
            double place = share * (sorted.length - 1);
            int below = (int) place;
            int above = Math.min(below + 1, sorted.length - 1);
            return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
        }
    }

    /**
     * How much one input has to do with the variance of an output. Estimates of small indices scatter about zero.
     *
     * @param input name of the input
     * @param firstOrder share of the variance that would go if this input alone were known
     * @param total share that would be left if all inputs but this one were known
     */
    public record Influence(String input, double firstOrder, double total) {}

    /**
     * Asks a sweep's calculator as often as it takes.
     *
     * @param sweep what varies by which axes, and at least one output that is a number; its sampling has no part in this
     * @param draws points of each sample, best a power of two; {@code draws · (axes + 2)} cases in all
     * @param seed the same seed gives the same figures
     * @throws InvalidInput when the sweep cannot be compiled, an output is no number or there are too many cases
     */
    public static Uncertainty of(Sweep sweep, int draws, int seed) {
        CompiledSweep compiled = sweep.compile(axes -> crossed(axes, draws, seed));
        long cases = compiled.count();
        int axes = compiled.inputs();
        check(
                cases <= MOST_CASES,
                "/sampling/count",
                "%d draws of %d inputs take %d cases; at most %d are asked for"
                        .formatted(draws, axes, cases, MOST_CASES));
        List<Column> columns =
                compiled.columns().subList(axes, compiled.columns().size());
        check(!columns.isEmpty(), "/outputs", "outputs must not be empty");
        for (int i = 0; i < columns.size(); i++) {
            check(columns.get(i).numeric(), "/outputs/" + i, columns.get(i).name() + " is not a number");
        }
        double[][] found = evaluated(compiled, columns.size());
        int failed = (int) Arrays.stream(found[columns.size()]).sum();
        List<Spread> spreads = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            spreads.add(spread(columns.get(i), compiled.columns().subList(0, axes), found[i]));
        }
        return new Uncertainty(draws, (int) cases, failed, spreads);
    }

    /** For each draw its point of the first sample, that of the second, and the first with one coordinate of the second. */
    private static Points crossed(int axes, int draws, int seed) {
        int group = axes + 2;
        return Points.drawn((long) draws * group, (row, axis) -> {
            int member = (int) (row % group);
            boolean second = member == 1 || member - 2 == axis;
            return Sobol.shifted(row / group, second ? axes + axis : axis, seed);
        });
    }

    /** The numbers of each output, case by case, NaN where there is none; last, which cases failed. */
    private static double[][] evaluated(CompiledSweep compiled, int outputs) {
        double[][] found = new double[outputs + 1][(int) compiled.count()];
        try {
            compiled.forEach(0, compiled.count(), Runtime.getRuntime().availableProcessors(), row -> {
                int at = (int) row.number();
                found[outputs][at] = row.ok() ? 0 : 1;
                for (int i = 0; i < outputs; i++) {
                    found[i][at] = row.cell(compiled.inputs() + i) instanceof Double number ? number : Double.NaN;
                }
            });
        } catch (IOException interrupted) {
            throw new UncheckedIOException(interrupted);
        }
        return found;
    }

    private static Spread spread(Column column, List<Column> inputs, double[] found) {
        int group = inputs.size() + 2;
        double[] sampled = IntStream.range(0, found.length)
                .filter(i -> i % group < 2)
                .mapToDouble(i -> found[i])
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        if (sampled.length < 2) {
            throw new InvalidInput(List.of(new Problem(
                    "/outputs",
                    ProblemCode.INCONSISTENT,
                    column.name() + ": fewer than two of the cases have an answer")));
        }
        double mean = Arrays.stream(sampled).average().orElseThrow();
        double variance = Arrays.stream(sampled)
                        .map(value -> (value - mean) * (value - mean))
                        .sum()
                / (sampled.length - 1);
        List<Influence> influences = IntStream.range(0, inputs.size())
                .mapToObj(i -> influence(inputs.get(i).name(), found, group, i + 2, mean, variance))
                .toList();
        return new Spread(column.name(), column.unit(), mean, Math.sqrt(variance), Percentiles.of(sampled), influences);
    }

    private static Influence influence(
            String input, double[] found, int group, int crossing, double mean, double variance) {
        double first = 0;
        double total = 0;
        int count = 0;
        for (int draw = 0; draw < found.length; draw += group) {
            double a = found[draw];
            double b = found[draw + 1];
            double crossed = found[draw + crossing];
            if (Double.isFinite(a) && Double.isFinite(b) && Double.isFinite(crossed)) {
                // taken from the mean, which changes no expectation and steadies the estimate
                first += (b - mean) * (crossed - a);
                total += (a - crossed) * (a - crossed) / 2;
                count++;
            }
        }
        double scale = count * variance;
        return scale == 0 ? new Influence(input, 0, 0) : new Influence(input, first / scale, total / scale);
    }

    private static void check(boolean holds, String at, String message) {
        if (!holds) {
            throw new InvalidInput(List.of(new Problem(at, ProblemCode.OUT_OF_RANGE, message)));
        }
    }
}
