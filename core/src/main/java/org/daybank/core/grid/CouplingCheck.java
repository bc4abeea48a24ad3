package org.daybank.core.grid;

import static org.daybank.core.working.Message.value;

import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

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
                        Check.atMost(GridRule.COUPLING_POWER, most, coupling.multimodePower()),
                        Check.atMost(
                                GridRule.COUPLING_SURPLUS,
                                surplus,
                                coupling.bankAccepts(),
                                value("leastLoad", coupling.leastLoad()))));
    }

    /** What to warn of, one for each rule that is broken. */
    public List<Hazard> hazards() {
        return checks.stream()
                .filter(check -> !check.passed())
                .map(check -> Hazard.of(
                        HazardCode.COUPLING, "grid inverter to multimode inverter", value("message", check.message())))
                .toList();
    }
}
