package org.daybank.core.design;

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
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.sun.Plane;

/**
 * Climbs from the smallest design that keeps the rules to one that is as available as was asked: a larger array-to-load ratio,
 * a longer autonomy, or both, in the order of price, each simulated once. What it finds is the cheapest of the designs that
 * these two make.
 */
final class Steering {
    /** By how much one step makes the array-to-load ratio larger. */
    private static final double ARRAY_STEP = 1.1;

    /** By how much one step makes the autonomy longer. */
    private static final double BANK_STEP = 1.2;

    private static final int MOST_STEPS = 12;

    /** The largest values that the policies take. */
    private static final double MOST_RATIO = 5;

    private static final double MOST_DAYS = 60;

    private final Draft first;
    private final Function<DesignBrief, Draft> drafts;
    private final Function<Candidate, Simulation> proof;
    private final Plane plane;
    private final Map<SystemParts, Simulation> known = new HashMap<>();
    private final Set<List<Integer>> seen = new HashSet<>();
    private final List<FrontierPoint> simulated = new ArrayList<>();
    private final PriorityQueue<Rung> queue =
            new PriorityQueue<>(Comparator.comparing((Rung rung) -> rung.candidate.price())
                    .thenComparing(rung -> rung.arraySteps + rung.bankSteps)
                    .thenComparing(rung -> rung.arraySteps));

    /** A design so many steps up, not simulated yet. */
    private record Rung(int arraySteps, int bankSteps, Draft draft, Candidate candidate) {}

    /**
     * Where the climb ended.
     *
     * @param draft that the design comes from
     * @param simulation of its choice
     * @param reached whether it is as available as was asked
     * @param simulated how many designs were
     * @param frontier of the designs simulated
     */
    record Outcome(Draft draft, Simulation simulation, boolean reached, int simulated, List<FrontierPoint> frontier) {}

    Steering(Draft first, Function<DesignBrief, Draft> drafts, Function<Candidate, Simulation> proof, Plane plane) {
        this.first = first;
        this.drafts = drafts;
        this.proof = proof;
        this.plane = plane;
    }

    /** Climbs until a design is as available as asked, the best known one when the steps or the allowance run out. */
    Optional<Outcome> climb(Ratio availability) {
        push(0, 0);
        Rung best = null;
        Simulation bestRun = null;
        int most = first.brief().policy().system().mostSimulated();
        while (!queue.isEmpty() && known.size() < most) {
            Rung rung = queue.remove();
            SystemParts parts = SystemParts.of(rung.candidate, plane);
            Simulation run = known.get(parts);
            if (run == null) {
                run = proof.apply(rung.candidate);
                known.put(parts, run);
                simulated.add(point(rung, run));
            }
            if (bestRun == null || available(run).compareTo(available(bestRun)) > 0) {
                best = rung;
                bestRun = run;
            }
            if (available(run).compareTo(availability) >= 0) {
                break;
            }
            push(rung.arraySteps + 1, rung.bankSteps);
            push(rung.arraySteps, rung.bankSteps + 1);
        }
        return best == null || bestRun == null
                ? Optional.empty()
                : Optional.of(new Outcome(
                        best.draft,
                        bestRun,
                        available(bestRun).compareTo(availability) >= 0,
                        known.size(),
                        frontier()));
    }

    private static Ratio available(Simulation run) {
        return run.reliability().availability();
    }

    private void push(int arraySteps, int bankSteps) {
        if (arraySteps > MOST_STEPS || bankSteps > MOST_STEPS || !seen.add(List.of(arraySteps, bankSteps))) {
            return;
        }
        DesignPolicy policy = first.brief().policy();
        double ratio = policy.array().arrayToLoadRatio().fraction() * Math.pow(ARRAY_STEP, arraySteps);
        double days = policy.bank().autonomy().days() * Math.pow(BANK_STEP, bankSteps);
        if (ratio > MOST_RATIO || days > MOST_DAYS) {
            return;
        }
        Draft draft = arraySteps + bankSteps == 0
                ? first
                : drafts.apply(first.brief()
                        .withPolicy(policy.withArray(policy.array().withArrayToLoadRatio(Ratio.of(ratio)))
                                .withBank(policy.bank().withAutonomy(TimeSpan.days(days)))));
        draft.chosen().ifPresent(candidate -> queue.add(new Rung(arraySteps, bankSteps, draft, candidate)));
    }

    private static FrontierPoint point(Rung rung, Simulation run) {
        DesignPolicy policy = rung.draft.brief().policy();
        return new FrontierPoint(
                rung.candidate.price(),
                available(run),
                policy.array().arrayToLoadRatio(),
                policy.bank().autonomy(),
                rung.candidate.nominalVoltage(),
                rung.candidate.charger().array().modules(),
                rung.candidate.layout().count());
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
