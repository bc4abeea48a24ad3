package org.daybank.core.generator;

import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Table;

/** The sizes in which generators are customarily offered; figures in {@code ratings.csv}. */
final class GeneratorRatings {
    private static final List<Power> ALL = Table.resource(GeneratorRatings.class, "ratings.csv").rows().stream()
            .map(row -> row.value(Power.class, "rating"))
            .sorted()
            .toList();

    private GeneratorRatings() {}

    /** The largest there is. */
    static Power largest() {
        return ALL.get(ALL.size() - 1);
    }

    /** The smallest of at least a power, which is at most the largest. */
    static Power next(Power least) {
        return ALL.stream()
                .filter(rating -> rating.compareTo(least) >= 0)
                .findFirst()
                .orElse(largest());
    }
}
