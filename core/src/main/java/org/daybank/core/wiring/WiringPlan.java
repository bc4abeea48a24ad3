package org.daybank.core.wiring;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.working.Caution;
import org.daybank.core.working.Working;

/**
 * All circuits of a system.
 *
 * @param fits whether every circuit keeps every rule
 * @param circuits in the order asked
 * @param metalMass of all conductors but those for earthing
 * @param metalCost of that mass
 * @param yearlyLoss of the circuits whose yearly energy is known; absent when none is
 */
public record WiringPlan(
        boolean fits, List<CircuitSizing> circuits, Mass metalMass, Money metalCost, Optional<Energy> yearlyLoss) {
    /** Keeps a copy. */
    public WiringPlan {
        circuits = List.copyOf(circuits);
    }

    /** Sizes every circuit by itself. */
    public static WiringPlan of(List<Circuit> circuits, WiringPolicy policy) {
        List<CircuitSizing> sized = circuits.stream()
                .map(circuit -> CircuitSizing.of(circuit, policy))
                .toList();
        List<ConductorRun> runs = sized.stream().map(CircuitSizing::conductors).toList();
        return new WiringPlan(
                sized.stream().allMatch(CircuitSizing::fits),
                sized,
                runs.stream().map(ConductorRun::metalMass).reduce(Mass.ZERO, Mass::plus),
                runs.stream()
                        .map(ConductorRun::metalCost)
                        .reduce(Money.zero(policy.pricePerKilogram().currency()), Money::plus),
                runs.stream().flatMap(run -> run.yearlyLoss().stream()).reduce(Energy::plus));
    }

    /** What can hurt someone or something in these circuits. */
    public List<Caution> cautions() {
        return WiringCautions.of(this);
    }

    /** The steps of every circuit. */
    public Working working() {
        Working.Builder steps = Working.builder();
        circuits.forEach(circuit -> steps.all(circuit.working()));
        return steps.build();
    }
}
