package org.daybank.core.wiring;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Table;

/** The standard ratings of overcurrent devices; figures in {@code device-ratings.csv}. */
final class DeviceRatings {
    private static final List<Rated> ALL = Table.resource(DeviceRatings.class, "device-ratings.csv").rows().stream()
            .flatMap(row -> Arrays.stream(row.text("ratings").split(" ", -1))
                    .map(rating -> new Rated(
                            row.value(RuleSet.class, "ruleSet"),
                            row.value(DeviceKind.class, "device"),
                            Current.amperes(Double.parseDouble(rating)),
                            row.value(Ratio.class, "actsAt"))))
            .sorted(Comparator.comparing(Rated::rating))
            .toList();

    private DeviceRatings() {}

    private record Rated(RuleSet rules, DeviceKind kind, Current rating, Ratio actsAt) {}

    /** The smallest standard device for a circuit that is rated for at least a current; nothing when none is so large. */
    static Optional<OvercurrentDevice> next(RuleSet rules, Circuit circuit, Current least) {
        return ALL.stream()
                .filter(rated -> rated.rules == rules
                        && rated.kind == circuit.kind().device()
                        && rated.rating.compareTo(least) >= 0)
                .findFirst()
                .map(rated -> new OvercurrentDevice(
                        rated.kind,
                        rated.rating,
                        circuit.resolved().highestVoltage(),
                        circuit.kind().directCurrent(),
                        Optional.ofNullable(circuit.faultCurrent()),
                        rated.actsAt));
    }
}
