package org.daybank.core.grid;

import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Caution;
import org.daybank.core.working.Finding;
import org.daybank.core.working.Severity;

/**
 * Whether a multimode inverter and its bank can take what grid inverters push at them in an outage.
 *
 * @param surplus over the load that surely runs
 * @param findings the rules it was held against
 */
public record CouplingCheck(Power surplus, List<Finding> findings) {
    /** Keeps a copy. */
    public CouplingCheck {
        findings = List.copyOf(findings);
    }

    /** Holds both against the grid inverters. */
    public static CouplingCheck of(Coupling coupling) {
        Power most = coupling.gridInverterPower();
        Power surplus = Power.watts(Math.max(0, most.minus(coupling.leastLoad()).watts()));
        return new CouplingCheck(
                surplus,
                List.of(
                        Finding.atMost(
                                "couplingPower",
                                most,
                                coupling.multimodePower(),
                                "The grid inverters give %s; the multimode inverter that must take it all when a load stops is rated %s.",
                                most,
                                coupling.multimodePower()),
                        Finding.atMost(
                                "couplingSurplus",
                                surplus,
                                coupling.bankAccepts(),
                                "With %s of load the grid inverters leave %s for the bank, which takes %s.",
                                coupling.leastLoad(),
                                surplus,
                                coupling.bankAccepts())));
    }

    /** What to warn of, one for each rule that is broken. */
    public List<Caution> cautions() {
        return findings.stream()
                .filter(finding -> !finding.met())
                .map(finding -> new Caution(
                        finding.rule(),
                        Severity.WARNING,
                        "grid inverter to multimode inverter",
                        finding.sentence() + " In an outage voltage and frequency run away and the inverters trip.",
                        "Put fewer grid inverters behind the multimode inverter, or a larger one; see that it throttles them by frequency. "
                                + Caution.LOCAL_CODE))
                .toList();
    }
}
