package org.daybank.core.design.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Function;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignPolicy;
import org.daybank.core.design.FrontierPoint;
import org.daybank.core.design.SystemParts;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.sun.Plane;

/**
 * Finds a system of the required availability: from the cheapest that passes every rule, with a larger array-to-load ratio, a
 * longer autonomy, or both, in the order of price, each simulated once. The result is the cheapest of the systems that these
 * two make.
 */
public final class AvailabilitySearch {
    /** Factor of the array-to-load ratio from one step to the next. */
    private static final double ARRAY_STEP = 1.1;

    /** Factor of the autonomy from one step to the next. */
    private static final double BANK_STEP = 1.2;

    private static final int MAXIMUM_STEPS = 12;

    /** The largest values that the policies permit. */
    private static final double MAXIMUM_RATIO = 5;

    private static final double MAXIMUM_DAYS = 60;

    private final SystemSelection first;
    private final Function<DesignBrief, SystemSelection> select;
    private final Function<CandidateSystem, Simulation> simulate;
    private final Plane plane;
    private final Map<SystemParts, Simulation> known = new HashMap<>();
    private final Set<List<Integer>> seen = new HashSet<>();
    private final List<FrontierPoint> simulated = new ArrayList<>();
    private final PriorityQueue<Step> queue =
            new PriorityQueue<>(Comparator.comparing((Step step) -> step.candidate.price())
                    .thenComparing(step -> step.arraySteps + step.bankSteps)
                    .thenComparing(step -> step.arraySteps));

    /** A system a number of steps from the first, not simulated yet. */
    private record Step(int arraySteps, int bankSteps, SystemSelection selection, CandidateSystem candidate) {}

    /**
     * The result of the search.
     *
     * @param selection that the system comes from
     * @param simulation of the system
     * @param reached whether it has the required availability
     * @param simulated number of systems simulated
     * @param frontier of the systems simulated
     */
    public record Result(
            SystemSelection selection,
            Simulation simulation,
            boolean reached,
            int simulated,
            List<FrontierPoint> frontier) {}

    /**
     * Creates a search.
     *
     * @param first selection that has a system
     * @param select selects systems for a brief that differs in its policy
     * @param simulate simulates a system
     * @param plane of the array
     */
    public AvailabilitySearch(
            SystemSelection first,
            Function<DesignBrief, SystemSelection> select,
            Function<CandidateSystem, Simulation> simulate,
            Plane plane) {
        this.first = first;
        this.select = select;
        this.simulate = simulate;
        this.plane = plane;
    }

    /** Returns the cheapest system of the required availability, or the most available found within the limits of the search. */
    public Optional<Result> find(Ratio availability) {
        push(0, 0);
        Step best = null;
        Simulation bestRun = null;
        int maximum = first.brief().policy().system().mostSimulated();
        while (!queue.isEmpty() && known.size() < maximum) {
            Step step = queue.remove();
            SystemParts parts = step.candidate.parts(plane);
            Simulation run = known.get(parts);
            if (run == null) {
                run = simulate.apply(step.candidate);
                known.put(parts, run);
                simulated.add(point(step, run));
            }
            if (bestRun == null || available(run).compareTo(available(bestRun)) > 0) {
                best = step;
                bestRun = run;
            }
            if (available(run).compareTo(availability) >= 0) {
                break;
            }
            push(step.arraySteps + 1, step.bankSteps);
            push(step.arraySteps, step.bankSteps + 1);
        }
        return best == null || bestRun == null
                ? Optional.empty()
                : Optional.of(new Result(
                        best.selection,
                        bestRun,
                        available(bestRun).compareTo(availability) >= 0,
                        known.size(),
                        frontier()));
    }

    private static Ratio available(Simulation run) {
        return run.reliability().availability();
    }

    private void push(int arraySteps, int bankSteps) {
        if (arraySteps > MAXIMUM_STEPS || bankSteps > MAXIMUM_STEPS || !seen.add(List.of(arraySteps, bankSteps))) {
            return;
        }
        DesignPolicy policy = first.brief().policy();
        double ratio = policy.array().arrayToLoadRatio().fraction() * Math.pow(ARRAY_STEP, arraySteps);
        double days = policy.bank().autonomy().days() * Math.pow(BANK_STEP, bankSteps);
        if (ratio > MAXIMUM_RATIO || days > MAXIMUM_DAYS) {
            return;
        }
        SystemSelection selection = arraySteps + bankSteps == 0
                ? first
                : select.apply(first.brief()
                        .withPolicy(policy.withArray(policy.array().withArrayToLoadRatio(Ratio.of(ratio)))
                                .withBank(policy.bank().withAutonomy(TimeSpan.days(days)))));
        selection.selected().ifPresent(candidate -> queue.add(new Step(arraySteps, bankSteps, selection, candidate)));
    }

    private static FrontierPoint point(Step step, Simulation run) {
        DesignPolicy policy = step.selection.brief().policy();
        return new FrontierPoint(
                step.candidate.price(),
                available(run),
                policy.array().arrayToLoadRatio(),
                policy.bank().autonomy(),
                step.candidate.nominalVoltage(),
                step.candidate.charger().array().modules(),
                step.candidate.layout().count());
    }

    private List<FrontierPoint> frontier() {
        List<FrontierPoint> frontier = new ArrayList<>();
        simulated.stream()
                .sorted(Comparator.comparing(FrontierPoint::price)
                        .thenComparing(FrontierPoint::availability, Comparator.reverseOrder()))
                .forEach(point -> {
                    boolean better = frontier.isEmpty()
                            || point.availability()
                                            .compareTo(frontier.get(frontier.size() - 1)
                                                    .availability())
                                    > 0;
                    if (better) {
                        frontier.add(point);
                    }
                });
        return List.copyOf(frontier);
    }
}
