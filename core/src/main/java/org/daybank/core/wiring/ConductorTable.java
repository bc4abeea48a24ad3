package org.daybank.core.wiring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.working.Table;

/** The conductors that a policy chooses among, thinnest first. */
final class ConductorTable {
    private static final Length HUNDRED_METRES = Length.metres(100);
    /** Strands run round the cable: ASTM B8 reckons their resistance two hundredths above that of solid wire. */
    private static final double LAY = 1.02;

    private static final Current UNLIMITED = Current.kiloamperes(1000);

    private static final List<Table.Row> AMERICAN = rows("nfpa-70-310-16.csv");
    private static final List<Table.Row> METRIC = rows("iec-60364-5-52.csv");
    private static final Map<String, Table.Row> METRIC_RESISTANCE = new HashMap<>();

    static {
        rows("iec-60228.csv").forEach(row -> METRIC_RESISTANCE.put(row.text("size_mm2"), row));
    }

    /** Tables as they were read: there are not many ways to read them. */
    private static final Map<Columns, List<Conductor>> READ = new ConcurrentHashMap<>();

    private ConductorTable() {}

    /** Which cells of the tables to read; temperatures of the columns in °C. */
    private record Columns(
            RuleSet rules,
            Metal metal,
            Stranding stranding,
            InstallationMethod method,
            int loaded,
            int insulation,
            int terminals) {}

    /**
     * The conductors of a policy's rule set and metal.
     *
     * @param loaded conductors that carry current in one circuit: two or three
     * @throws InvalidInput when no ampacity is listed for them
     */
    static List<Conductor> of(WiringPolicy policy, int loaded) {
        int insulation = InsulationColumn.atOrBelow(policy.ruleSet(), policy.insulationTemperature());
        int terminals =
                Math.min(insulation, InsulationColumn.atOrBelow(policy.ruleSet(), policy.terminalTemperature()));
        Columns columns = new Columns(
                policy.ruleSet(), policy.metal(), policy.stranding(), policy.method(), loaded, insulation, terminals);
        List<Conductor> conductors = READ.computeIfAbsent(columns, ConductorTable::read);
        if (conductors.isEmpty()) {
            throw new InvalidInput(
                    List.of(
                            new Problem(
                                    "/policy/metal",
                                    ProblemCode.OUT_OF_RANGE,
                                    "metal must be copper where three conductors are loaded: no ampacity of aluminium is listed there")));
        }
        return conductors;
    }

    private static List<Conductor> read(Columns columns) {
        return switch (columns.rules) {
            case IEC -> metric(columns);
            case NFPA -> american(columns.metal, columns.insulation, columns.terminals);
        };
    }

    private static List<Conductor> metric(Columns columns) {
        String method = switch (columns.method) {
            case CONDUIT -> "B1";
            case CLIPPED_DIRECT -> "C";
        };
        Map<String, Current> atTerminals = new HashMap<>();
        metricRows(columns.metal, columns.loaded, columns.terminals)
                .forEach(row -> atTerminals.put(row.text("size_mm2"), amperes(row, method)));
        return metricRows(columns.metal, columns.loaded, columns.insulation).stream()
                .map(row -> {
                    String size = row.text("size_mm2");
                    return new Conductor(
                            ConductorSize.metric(CrossSection.squareMillimetres(row.value(Double.class, "size_mm2"))),
                            metricResistance(size, columns),
                            Objects.requireNonNull(atTerminals.get(size)),
                            amperes(row, method),
                            UNLIMITED);
                })
                .toList();
    }

    private static List<Table.Row> metricRows(Metal metal, int loaded, int insulation) {
        return METRIC.stream()
                .filter(row -> row.value(Metal.class, "metal") == metal
                        && row.value(Integer.class, "loaded") == loaded
                        && row.value(Integer.class, "insulation_C") == insulation)
                .toList();
    }

    private static Resistance metricResistance(String size, Columns columns) {
        String column = switch (columns.metal) {
            case COPPER -> columns.stranding == Stranding.FLEXIBLE ? "copperClass5" : "copperClass2";
            case ALUMINIUM -> "aluminiumClass2";
        };
        Table.Row row = Objects.requireNonNull(METRIC_RESISTANCE.get(size));
        return Resistance.ohms(row.value(Double.class, column) / 10);
    }

    private static List<Conductor> american(Metal metal, int insulation, int terminals) {
        String prefix = switch (metal) {
            case COPPER -> "copper";
            case ALUMINIUM -> "aluminium";
        };
        return AMERICAN.stream()
                .filter(row -> row.optionalText(prefix + insulation).isPresent())
                .map(row -> {
                    ConductorSize size = ConductorSize.american(row.text("size"));
                    return new Conductor(
                            size,
                            metal.resistance(HUNDRED_METRES, size.crossSection())
                                    .times(LAY),
                            amperes(row, prefix + terminals),
                            amperes(row, prefix + insulation),
                            row.optionalValue(Double.class, prefix + "MostDevice")
                                    .map(Current::amperes)
                                    .orElse(UNLIMITED));
                })
                .toList();
    }

    private static Current amperes(Table.Row row, String column) {
        return Current.amperes(row.value(Double.class, column));
    }

    private static List<Table.Row> rows(String name) {
        return Table.resource(ConductorTable.class, name).rows();
    }
}
