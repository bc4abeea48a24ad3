package org.daybank.core.wiring;

import java.util.List;
import java.util.stream.Collectors;
import org.daybank.core.quantity.Temperature;

/** The temperature ratings for which the tables of a rule set have a column. */
final class InsulationColumn {
    private InsulationColumn() {}

    private static List<Integer> of(RuleSet rules) {
        return switch (rules) {
            case IEC -> List.of(70, 90);
            case NFPA -> List.of(60, 75, 90);
        };
    }

    static String names(RuleSet rules) {
        return of(rules).stream().map(celsius -> celsius + " °C").collect(Collectors.joining(", "));
    }

    static boolean exists(RuleSet rules, Temperature rating) {
        return of(rules).stream().anyMatch(celsius -> celsius == rating.celsius());
    }

    static boolean reaches(RuleSet rules, Temperature rating) {
        return of(rules).get(0) <= rating.celsius();
    }

    /** The hottest column at or below a temperature, in °C. */
    static int atOrBelow(RuleSet rules, Temperature rating) {
        return of(rules).stream()
                .filter(celsius -> celsius <= rating.celsius())
                .reduce((cooler, hotter) -> hotter)
                .orElseThrow();
    }
}
