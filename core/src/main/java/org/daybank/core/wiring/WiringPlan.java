package org.daybank.core.wiring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;

/**
 * All circuits of a system.
 *
 * @param fits whether every circuit keeps every rule
 * @param circuits in the order asked
 * @param metalMass of all conductors but those for earthing
 * @param metalCost of that mass
 * @param yearlyLoss of the circuits whose yearly energy is known; absent when none is
 * @param arrayDropShare drop from module to controller: the worst of each kind of circuit that modules feed, added up;
 *     absent without such a circuit
 */
public record WiringPlan(
        boolean fits,
        List<CircuitSizing> circuits,
        Mass metalMass,
        Money metalCost,
        Optional<Energy> yearlyLoss,
        Optional<Ratio> arrayDropShare) {
    /** Keeps a copy. */
    public WiringPlan {
        circuits = List.copyOf(circuits);
    }

    /**
     * Sizes every circuit by itself.
     *
     * @throws InvalidInput with everything that the tables hold nothing for
     */
    public static WiringPlan of(List<Circuit> circuits, WiringPolicy policy) {
        List<CircuitSizing> sized = sized(circuits, policy);
        List<ConductorRun> runs = sized.stream().map(CircuitSizing::conductors).toList();
        return new WiringPlan(
                sized.stream().allMatch(CircuitSizing::fits),
                sized,
                runs.stream().map(ConductorRun::metalMass).reduce(Mass.ZERO, Mass::plus),
                runs.stream()
                        .map(ConductorRun::metalCost)
                        .reduce(Money.zero(policy.pricePerKilogram().currency()), Money::plus),
                runs.stream().flatMap(run -> run.yearlyLoss().stream()).reduce(Energy::plus),
                arrayDropShare(sized));
    }

    private static List<CircuitSizing> sized(List<Circuit> circuits, WiringPolicy policy) {
        List<CircuitSizing> sized = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < circuits.size(); i++) {
            try {
                sized.add(CircuitSizing.of(circuits.get(i), policy));
            } catch (InvalidInput refused) {
                for (Problem problem : refused.problems()) {
                    problems.add(problem.path().startsWith("/policy") ? problem : problem.under("/circuits/" + i));
                }
            }
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems.stream().distinct().toList());
        }
        return sized;
    }

    /** The worst of each kind of circuit that modules feed, added up; nothing without such a circuit. */
    private static Optional<Ratio> arrayDropShare(List<CircuitSizing> sized) {
        Map<CircuitKind, Ratio> worst = new EnumMap<>(CircuitKind.class);
        sized.stream()
                .filter(circuit -> circuit.kind().fedByModules())
                .forEach(circuit -> worst.merge(
                        circuit.kind(),
                        circuit.conductors().dropShare(),
                        (one, other) -> one.compareTo(other) >= 0 ? one : other));
        return worst.values().stream().reduce((one, other) -> Ratio.of(one.fraction() + other.fraction()));
    }

    /** What can hurt someone or something in these circuits. */
    public List<Hazard> hazards() {
        return WiringHazards.of(this);
    }

    /** The steps of every circuit. */
    public Working working() {
        Working.Builder steps = Working.builder();
        circuits.forEach(circuit -> steps.all(circuit.working()));
        return steps.build();
    }
}
