package org.daybank.core.wiring;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Current;
import org.daybank.core.schema.Scalars;
import org.daybank.core.working.Table;

/** The size of the conductor that earths equipment and frames. */
final class EarthingConductor {
    private static final List<Table.Row> AMERICAN =
            Table.resource(EarthingConductor.class, "nfpa-70-250-122.csv").rows();

    /** IEC 60364-5-54 table 54.2: up to this it equals the line conductor. */
    private static final CrossSection EQUAL_UP_TO = CrossSection.squareMillimetres(16);
    /** IEC 60364-5-54 table 54.2: up to this it is 16 mm², beyond half the line conductor. */
    private static final CrossSection SIXTEEN_UP_TO = CrossSection.squareMillimetres(35);
    /** IEC 62548-1: frames of an array are bonded with at least this much copper. */
    private static final CrossSection LEAST_FOR_FRAMES = CrossSection.squareMillimetres(6);

    private EarthingConductor() {}

    /**
     * The smallest that will do; nothing when the table ends before.
     *
     * @param protection rating of the overcurrent device, or the current to be carried where there is none
     * @param byAmpacity area of each conductor that ampacity alone would take
     * @param chosen conductors that were taken
     */
    static Optional<ConductorSize> of(
            Circuit circuit,
            WiringPolicy policy,
            List<Conductor> table,
            Current protection,
            CrossSection byAmpacity,
            ConductorRun chosen) {
        return switch (policy.ruleSet()) {
            case IEC -> next(table, metric(circuit, chosen.crossSection()));
            case NFPA ->
                // 250.122(B): grows with line conductors that are larger than ampacity asks; (A): never above them
                american(policy.metal(), protection)
                        .flatMap(least -> next(
                                table,
                                smaller(
                                        least.times(chosen.size().crossSection().dividedBy(byAmpacity)),
                                        chosen.size().crossSection())));
        };
    }

    private static CrossSection metric(Circuit circuit, CrossSection line) {
        CrossSection least = line.compareTo(EQUAL_UP_TO) <= 0
                ? line
                : line.compareTo(SIXTEEN_UP_TO) <= 0 ? EQUAL_UP_TO : line.dividedBy(2);
        return circuit.kind().fedByModules() && least.compareTo(LEAST_FOR_FRAMES) < 0 ? LEAST_FOR_FRAMES : least;
    }

    private static CrossSection smaller(CrossSection one, CrossSection other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private static Optional<CrossSection> american(Metal metal, Current protection) {
        return AMERICAN.stream()
                .filter(row -> protection.amperes() <= row.value(Double.class, "upTo_A"))
                .findFirst()
                .map(row ->
                        ConductorSize.american(row.text(Scalars.name(metal))).crossSection());
    }

    /** Sizes are compared with a grain of tolerance: the same gauge reached by two ways of reckoning is the same. */
    private static Optional<ConductorSize> next(List<Conductor> table, CrossSection least) {
        CrossSection enough = least.times(1 - 1e-9);
        return table.stream()
                .map(Conductor::size)
                .filter(size -> size.crossSection().compareTo(enough) >= 0)
                .findFirst();
    }
}
