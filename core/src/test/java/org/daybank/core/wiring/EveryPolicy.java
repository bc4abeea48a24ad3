package org.daybank.core.wiring;

import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.quantity.Temperature;

/** Every combination of rule set, metal, stranding, method and insulation that there is. */
final class EveryPolicy {
    static final List<WiringPolicy> ALL = Stream.of(RuleSet.values())
            .flatMap(rules -> Stream.of(60, 70, 75, 90)
                    .filter(celsius -> InsulationColumn.exists(rules, Temperature.celsius(celsius)))
                    .map(celsius -> WiringPolicy.standard()
                            .withRuleSet(rules)
                            .withInsulationTemperature(Temperature.celsius(celsius))))
            .flatMap(policy -> Stream.of(InstallationMethod.values()).map(policy::withMethod))
            .flatMap(policy ->
                    Stream.of(policy, policy.withStranding(Stranding.FLEXIBLE), policy.withMetal(Metal.ALUMINIUM)))
            .toList();

    private EveryPolicy() {}
}
