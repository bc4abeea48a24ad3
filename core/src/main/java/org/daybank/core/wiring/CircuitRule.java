package org.daybank.core.wiring;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Table;

/**
 * By what a rule set multiplies the design current of a circuit; figures in {@code circuit-rules.csv}.
 *
 * @param terminals against the uncorrected ampacity at the terminals
 * @param conditions against the corrected ampacity
 * @param device least rating of the overcurrent device
 * @param mostDevice greatest rating of it, where one is set
 * @param source clause
 */
record CircuitRule(Ratio terminals, Ratio conditions, Ratio device, Optional<Ratio> mostDevice, String source) {
    private static final List<Table.Row> ROWS =
            Table.resource(CircuitRule.class, "circuit-rules.csv").rows();

    static CircuitRule of(RuleSet rules, CircuitKind kind) {
        return ROWS.stream()
                .filter(row -> row.value(RuleSet.class, "ruleSet") == rules
                        && row.value(CircuitKind.Role.class, "role") == kind.role())
                .findFirst()
                .map(row -> new CircuitRule(
                        row.value(Ratio.class, "terminals"),
                        row.value(Ratio.class, "conditions"),
                        row.value(Ratio.class, "device"),
                        row.optionalValue(Ratio.class, "mostDevice"),
                        row.text("source")))
                .orElseThrow();
    }
}
