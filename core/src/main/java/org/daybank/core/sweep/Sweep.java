package org.daybank.core.sweep;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.jspecify.annotations.Nullable;

/**
 * One calculator asked for many cases: which case, what varies in it, and what is wanted of the results.
 *
 * <pre>{@code
 * record Case(BankDemand demand, BankPolicy policy) {}
 *
 * Sweep.of(new Case(demand, BankPolicy.standard()), c -> BankCapacity.needed(c.demand(), c.policy()))
 *         .vary("policy.autonomy", Axis.of(TimeSpan.days(1), TimeSpan.days(2), TimeSpan.days(3)))
 *         .vary("demand.dailyEnergy", Axis.range(Energy.kilowattHours(1), Energy.kilowattHours(5), 9))
 *         .output("requiredCapacity")
 *         .rows()
 *         .forEach(System.out::println);
 * }</pre>
 *
 * <p>A path names components of records joined by points, elements of lists by index in brackets: {@code loads[3].power}.
 * What the base leaves out follows what varies: a default that depends on a varied component is resolved in each case.
 *
 * <p>Immutable; each method gives a new sweep.
 */
public final class Sweep {
    /** Most axes. */
    public static final int MOST_AXES = 32;

    /** Most outputs. */
    public static final int MOST_OUTPUTS = 256;

    private final Record base;
    private final Function<Object, Object> calculator;
    private final List<Varied> axes;
    private final List<Named> outputs;
    private final Sampling sampling;

    private Sweep(
            Record base,
            Function<Object, Object> calculator,
            List<Varied> axes,
            List<Named> outputs,
            Sampling sampling) {
        this.base = base;
        this.calculator = calculator;
        this.axes = axes;
        this.outputs = outputs;
        this.sampling = sampling;
    }

    /** An axis, what it varies, and what its column is called. */
    record Varied(String name, String path, Axis axis) {}

    /** An output, and what its column is called. */
    record Named(String name, String path) {}

    /**
     * A sweep that varies nothing yet.
     *
     * @param base the case that is varied: a record of facts and policies
     * @param calculator asked for each case; it must give the same result for the same case on any thread. A case that it
     *     refuses with {@link InvalidInput} is a row of status {@code invalid}, one for which it throws another {@link
     *     IllegalArgumentException} or an {@link ArithmeticException} a row of status {@code failed}; any other exception is a
     *     defect and ends the sweep. A result that is a {@link org.daybank.core.working.Solvable} says itself whether there is
     *     a solution
     */
    public static <C extends Record, R extends Record> Sweep of(C base, Function<? super C, ? extends R> calculator) {
        @SuppressWarnings("unchecked")
        Class<C> type = (Class<C>) base.getClass();
        return new Sweep(base, made -> calculator.apply(type.cast(made)), List.of(), List.of(), Sampling.grid());
    }

    /** The same with one more place that varies. */
    public Sweep vary(String path, Axis axis) {
        return vary(path, path, axis);
    }

    /** The same with one more place that varies, whose column has a name of its own. */
    public Sweep vary(String name, String path, Axis axis) {
        return new Sweep(base, calculator, appended(axes, new Varied(name, path, axis)), outputs, sampling);
    }

    /** The same with one more column: a value somewhere in the result. */
    public Sweep output(String path) {
        return output(path, path);
    }

    /** The same with one more column, which has a name of its own. */
    public Sweep output(String name, String path) {
        return new Sweep(base, calculator, axes, appended(outputs, new Named(name, path)), sampling);
    }

    /** The same with other cases chosen: every point of the grid unless this says otherwise. */
    public Sweep sampled(Sampling how) {
        return new Sweep(base, calculator, axes, outputs, how);
    }

    /** The rows, each calculated when the stream comes to it; in parallel where the stream is made so. */
    public Stream<Row> rows() {
        return compile().rows();
    }

    /**
     * Validation everything and turns paths into setters and getters. The calculator is asked once, for the base.
     *
     * @throws InvalidInput with everything that is wrong, under {@code /axes/0/path}, {@code /outputs/1} and the like
     */
    public CompiledSweep compile() {
        return new Compilation().compile(null);
    }

    /** The same with points of the caller's. */
    CompiledSweep compile(Function<Integer, Points> points) {
        return new Compilation().compile(points);
    }

    private static <T> List<T> appended(List<T> list, T element) {
        List<T> longer = new ArrayList<>(list);
        longer.add(element);
        return List.copyOf(longer);
    }

    /** Gathers what is wrong on the way. */
    private final class Compilation {
        private final Problems problems = new Problems();

        CompiledSweep compile(@Nullable Function<Integer, Points> given) {
            check(
                    axes.size() <= MOST_AXES,
                    "/axes",
                    "axes must be at most %s, but were %s.".formatted(MOST_AXES, axes.size()));
            check(
                    outputs.size() <= MOST_OUTPUTS,
                    "/outputs",
                    "outputs must be at most %s, but were %s.".formatted(MOST_OUTPUTS, outputs.size()));
            done();
            List<Input> inputs = new ArrayList<>();
            List<FieldPath> paths = new ArrayList<>();
            Set<String> names = new HashSet<>();
            for (int i = 0; i < axes.size(); i++) {
                Varied varied = axes.get(i);
                String at = "/axes/" + i;
                check(names.add(varied.name()), at + "/path", varied.name() + " is varied by two axes");
                attempt(at + "/path", () -> {
                    FieldPath path = FieldPath.parse(varied.path());
                    Place place = Place.find(base.getClass(), path);
                    paths.add(path);
                    attempt(
                            at,
                            () -> inputs.add(Input.of(
                                    varied.name(),
                                    place,
                                    base,
                                    varied.axis(),
                                    given != null || sampling.method() != Sampling.Method.GRID)));
                });
            }
            done();
            CasePlan plan = plan(paths);
            List<Output> found = outputs.isEmpty() ? List.of() : outputs(names);
            List<AxisValues> values = inputs.stream().map(Input::values).toList();
            Points points = given == null ? Points.of(sampling, values) : given.apply(values.size());
            return new CompiledSweep(plan, calculator, inputs, found, points);
        }

        private CasePlan plan(List<FieldPath> paths) {
            if (paths.isEmpty()) {
                problems.add("/axes", ProblemCode.MISSING, "axes must not be empty: nothing varies");
                done();
            }
            try {
                return CasePlan.of(base, paths);
            } catch (CasePlan.PathRefused refused) {
                throw problems.add(
                                "/axes/%s/path".formatted(refused.axis()),
                                ProblemCode.CONFLICT,
                                String.valueOf(refused.getMessage()))
                        .asException();
            }
        }

        private List<Output> outputs(Set<String> names) {
            List<Output> found = new ArrayList<>();
            Object example = example();
            for (int i = 0; i < outputs.size(); i++) {
                Named named = outputs.get(i);
                check(names.add(named.name()), "/outputs/" + i, named.name() + " is the name of two columns");
                attempt(
                        "/outputs/" + i,
                        () -> found.add(Output.of(named.name(), FieldPath.parse(named.path()), example)));
            }
            done();
            return found;
        }

        /** What the calculator says of the base, from which types and currencies of the outputs are known. */
        private Object example() {
            try {
                return calculator.apply(base);
            } catch (InvalidInput refused) {
                throw new InvalidInput(refused.problems().stream()
                        .map(problem -> problem.under("/base"))
                        .toList());
            } catch (IllegalArgumentException | ArithmeticException refused) {
                throw new InvalidInput(
                        List.of(new Problem("/base", ProblemCode.OUT_OF_RANGE, String.valueOf(refused.getMessage()))));
            }
        }

        private void attempt(String at, Runnable step) {
            try {
                step.run();
            } catch (InvalidInput refused) {
                problems.addAll(refused, problem -> problem.under(at));
            } catch (IllegalArgumentException refused) {
                problems.add(at, ProblemCode.UNREADABLE, String.valueOf(refused.getMessage()));
            }
        }

        private void check(boolean holds, String at, String message) {
            if (!holds) {
                problems.add(at, ProblemCode.OUT_OF_RANGE, message);
            }
        }

        private void done() {
            problems.throwIfAny();
        }
    }
}
