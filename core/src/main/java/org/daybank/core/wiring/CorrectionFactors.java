package org.daybank.core.wiring;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Scalars;
import org.daybank.core.working.Table;

/** What heat and crowding leave of an ampacity. */
final class CorrectionFactors {
    private static final List<Table.Row> AMBIENT =
            Table.resource(CorrectionFactors.class, "ambient-factors.csv").rows();
    private static final List<Table.Row> GROUPING =
            Table.resource(CorrectionFactors.class, "grouping-factors.csv").rows();

    private CorrectionFactors() {}

    /**
     * The factor for the air around a circuit's cable.
     *
     * @throws InvalidInput when the air is too hot for the insulation to carry anything
     */
    static Ratio ambient(WiringPolicy policy, Circuit circuit) {
        Temperature air = CircuitSizing.air(circuit, policy);
        int column = InsulationColumn.atOrBelow(policy.ruleSet(), policy.insulationTemperature());
        return rows(AMBIENT, policy)
                .filter(row -> air.celsius() <= row.value(Double.class, "upTo_C"))
                .findFirst()
                .flatMap(row -> row.optionalValue(Ratio.class, "C" + column))
                .orElseThrow(() -> new InvalidInput(List.of(new Problem(
                        circuit.ambient() == null ? "/policy/ambient" : "/ambient",
                        ProblemCode.OUT_OF_RANGE,
                        "ambient must leave something of the ampacity of insulation for %s, but was %s."
                                .formatted(policy.insulationTemperature(), air)))));
    }

    /**
     * The factor for cables that lie together; conductors in parallel count as circuits of their own.
     *
     * @param loaded conductors that carry current in one circuit
     * @return nothing when so many are not listed
     */
    static Optional<Ratio> grouping(WiringPolicy policy, int loaded, int parallel) {
        int circuits = policy.groupedCircuits() - 1 + parallel;
        int counted = switch (policy.ruleSet()) {
            case IEC -> circuits;
            case NFPA -> circuits * loaded;
        };
        return rows(GROUPING, policy)
                .filter(row -> counted <= row.value(Integer.class, "upTo"))
                .findFirst()
                .map(row -> row.value(Ratio.class, Scalars.name(policy.method())));
    }

    private static Stream<Table.Row> rows(List<Table.Row> table, WiringPolicy policy) {
        return table.stream().filter(row -> row.value(RuleSet.class, "ruleSet") == policy.ruleSet());
    }
}
