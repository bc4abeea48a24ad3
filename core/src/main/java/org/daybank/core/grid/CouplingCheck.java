package org.daybank.core.grid;

import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/**
 * Whether a multimode inverter and its bank can take what grid inverters push at them in an outage.
 *
 * @param surplus over the load that surely runs
 * @param checks the rules it was held against
 */
public record CouplingCheck(Power surplus, List<Check> checks) {
    /** Keeps a copy. */
    public CouplingCheck {
        checks = List.copyOf(checks);
    }

    /** Holds both against the grid inverters. */
    public static CouplingCheck of(Coupling coupling) {
        Power most = coupling.gridInverterPower();
        Power surplus = Power.watts(Math.max(0, most.minus(coupling.leastLoad()).watts()));
        return new CouplingCheck(
                surplus,
                List.of(
                        Check.atMost(
                                "couplingPower",
                                most,
                                coupling.multimodePower(),
                                "The grid inverters give %s; the multimode inverter that must take it all when a load stops is rated %s.",
                                most,
                                coupling.multimodePower()),
                        Check.atMost(
                                "couplingSurplus",
                                surplus,
                                coupling.bankAccepts(),
                                "With %s of load the grid inverters leave %s for the bank, which takes %s.",
                                coupling.leastLoad(),
                                surplus,
                                coupling.bankAccepts())));
    }

    /** What to warn of, one for each rule that is broken. */
    public List<Hazard> hazards() {
        return checks.stream()
                .filter(check -> !check.passed())
                .map(check -> new Hazard(
                        check.rule(),
                        Severity.WARNING,
                        "grid inverter to multimode inverter",
                        check.message() + " In an outage voltage and frequency run away and the inverters trip.",
                        "Put fewer grid inverters behind the multimode inverter, or a larger one; see that it throttles them by frequency. "
                                + Hazard.LOCAL_CODE))
                .toList();
    }
}
