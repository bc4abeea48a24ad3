package org.daybank.core.sweep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.sweep.kernel.Sobol;
import org.jspecify.annotations.Nullable;

/**
 * What the uncertainty of the inputs of a sweep makes of its outputs.
 *
 * <p>Two independent samples of the inputs and their crossings, one input at a time, are taken from one shifted sequence of
 * Sobol: (inputs + 2) cases for each draw. First-order indices are those of Saltelli et al. 2010 (Computer Physics
 * Communications 181:259–270, table 2, line b), total indices those of Jansen 1999 (the same table, line f).
 *
 * <p>A case may have no answer: its input is refused, it has no solution, or the output is absent from the result. Such cases
 * are counted for each output. A draw of which one of the two points has no answer is excluded from mean, deviation and
 * percentiles of that output; a draw with any case without an answer is excluded from its indices. What remains describes the
 * part of the inputs that has an answer, and only that part.
 *
 * @param draws how many points each of the two samples has
 * @param cases how often the calculator was called
 * @param unanswered how many of the cases were refused, failed or had no solution
 * @param outputs one for each output of the sweep
 */
public record Uncertainty(int draws, int cases, int unanswered, List<Spread> outputs) {
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
     * @param influences what each input has to do with it, in the order of the inputs; empty when fewer than two draws are
     *     complete
     * @param unanswered how many of the cases have no value of this output
     * @param reasons why they have none, the most frequent reason first
     * @param excludedFromPercentiles how many draws have a point without a value, and count in neither mean, deviation nor
     *     percentiles
     * @param excludedFromIndices how many draws have any case without a value, and count in no index
     */
    public record Spread(
            String output,
            String unit,
            double mean,
            double deviation,
            Percentiles percentiles,
            List<Influence> influences,
            int unanswered,
            List<ReasonCount> reasons,
            int excludedFromPercentiles,
            int excludedFromIndices) {
        /** Keeps copies. */
        public Spread {
            influences = List.copyOf(influences);
            reasons = List.copyOf(reasons);
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
     * How many cases have no value for one reason.
     *
     * @param reason the {@linkplain Row#reason() reason} of a row, or {@code absent} where the case has an answer without this
     *     value
     * @param cases how many
     */
    public record ReasonCount(String reason, int cases) {}

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
                "%s draws of %s inputs take %s cases; at most %s are asked for"
                        .formatted(draws, axes, cases, MOST_CASES));
        List<Column> columns =
                compiled.columns().subList(axes, compiled.columns().size());
        check(!columns.isEmpty(), "/outputs", "outputs must not be empty");
        for (int i = 0; i < columns.size(); i++) {
            check(columns.get(i).numeric(), "/outputs/" + i, columns.get(i).name() + " is not a number");
        }
        Answers answers = new Answers(compiled, columns.size());
        List<Spread> spreads = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            spreads.add(
                    spread(columns.get(i), compiled.columns().subList(0, axes), answers.found[i], answers.reasons(i)));
        }
        return new Uncertainty(draws, (int) cases, answers.unanswered, spreads);
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

    /** What the calculator answered, case by case. */
    private static final class Answers {
        private static final String ABSENT = "absent";

        /** The numbers of each output; NaN where there is none. */
        private final double[][] found;

        /** How often each output has no value for each reason. */
        private final List<Map<String, Integer>> missing = new ArrayList<>();

        private int unanswered;

        Answers(CompiledSweep compiled, int outputs) {
            found = new double[outputs][(int) compiled.count()];
            for (int i = 0; i < outputs; i++) {
                missing.add(new TreeMap<>());
            }
            try {
                compiled.forEach(0, compiled.count(), Runtime.getRuntime().availableProcessors(), row -> {
                    unanswered += row.ok() ? 0 : 1;
                    for (int i = 0; i < outputs; i++) {
                        take(i, row, row.cell(compiled.inputs() + i));
                    }
                });
            } catch (IOException interrupted) {
                throw new UncheckedIOException(interrupted);
            }
        }

        private void take(int output, Row row, @Nullable Object cell) {
            double value = cell instanceof Double number && Double.isFinite(number) ? number : Double.NaN;
            found[output][(int) row.number()] = value;
            if (Double.isNaN(value)) {
                missing.get(output).merge(row.reason().orElse(ABSENT), 1, Integer::sum);
            }
        }

        List<ReasonCount> reasons(int output) {
            return missing.get(output).entrySet().stream()
                    .map(entry -> new ReasonCount(entry.getKey(), entry.getValue()))
                    .sorted(Comparator.comparingInt(ReasonCount::cases).reversed())
                    .toList();
        }
    }

    private static Spread spread(Column column, List<Column> inputs, double[] found, List<ReasonCount> reasons) {
        int group = inputs.size() + 2;
        int draws = found.length / group;
        int[] pairs = drawsWith(2, found, group);
        if (pairs.length < 2) {
            throw new InvalidInput(List.of(new Problem(
                    "/outputs",
                    ProblemCode.INCONSISTENT,
                    "%s: fewer than two draws have an answer; cases without one: %s"
                            .formatted(
                                    column.name(),
                                    reasons.stream()
                                            .map(reason -> reason.cases() + " " + reason.reason())
                                            .collect(Collectors.joining(", "))))));
        }
        double[] sampled = samples(pairs, found);
        Arrays.sort(sampled);
        double mean = mean(sampled);
        int[] complete = drawsWith(group, found, group);
        List<Influence> influences = complete.length < 2
                ? List.of()
                : IntStream.range(0, inputs.size())
                        .mapToObj(i -> influence(inputs.get(i).name(), found, i + 2, complete))
                        .toList();
        return new Spread(
                column.name(),
                column.unit(),
                mean,
                Math.sqrt(variance(sampled, mean)),
                Percentiles.of(sampled),
                influences,
                reasons.stream().mapToInt(ReasonCount::cases).sum(),
                reasons,
                draws - pairs.length,
                draws - complete.length);
    }

    /** The first cases of the draws whose first so many cases all have a value. */
    private static int[] drawsWith(int members, double[] found, int group) {
        return IntStream.range(0, found.length / group)
                .map(draw -> draw * group)
                .filter(first -> IntStream.range(first, first + members).allMatch(i -> Double.isFinite(found[i])))
                .toArray();
    }

    /** The values of both points of some draws. */
    private static double[] samples(int[] draws, double[] found) {
        return Arrays.stream(draws)
                .flatMap(first -> IntStream.of(first, first + 1))
                .mapToDouble(i -> found[i])
                .toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double variance(double[] values, double mean) {
        return Arrays.stream(values)
                        .map(value -> (value - mean) * (value - mean))
                        .sum()
                / (values.length - 1);
    }

    private static Influence influence(String input, double[] found, int crossing, int[] complete) {
        double[] sampled = samples(complete, found);
        double mean = mean(sampled);
        double first = 0;
        double total = 0;
        for (int draw : complete) {
            double a = found[draw];
            double b = found[draw + 1];
            double crossed = found[draw + crossing];
            // taken from the mean, which changes no expectation and steadies the estimate
            first += (b - mean) * (crossed - a);
            total += (a - crossed) * (a - crossed) / 2;
        }
        double scale = complete.length * variance(sampled, mean);
        return scale == 0 ? new Influence(input, 0, 0) : new Influence(input, first / scale, total / scale);
    }

    private static void check(boolean holds, String at, String message) {
        if (!holds) {
            throw new InvalidInput(List.of(new Problem(at, ProblemCode.OUT_OF_RANGE, message)));
        }
    }
}
