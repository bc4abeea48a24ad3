package org.daybank.core.design;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.design.search.ProductEvaluation;
import org.daybank.core.design.search.VoltageSearch;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.TimeSpan;

/**
 * The price of a longer or shorter autonomy: that of the cheapest system of the selected voltage and chemistry.
 *
 * @param autonomy that the bank is sized for
 * @param price of its parts
 * @param battery model of its batteries
 * @param batteries how many
 * @param modules how many
 */
public record AutonomyPoint(TimeSpan autonomy, Money price, String battery, int batteries, int modules) {
    /** Shares of the required autonomy. */
    private static final List<Double> SHARES = List.of(0.5, 1.0, 1.5, 2.0);

    private static final TimeSpan MAXIMUM = TimeSpan.days(60);
    private static final TimeSpan MINIMUM = TimeSpan.hours(12);

    /**
     * From half to twice the required autonomy, as far as there is a system that passes every rule.
     *
     * @param selected for the required autonomy
     * @param evaluation evaluates the same products for another brief
     */
    static List<AutonomyPoint> around(
            DesignBrief brief, CandidateSystem selected, Function<DesignBrief, ProductEvaluation> evaluation) {
        TimeSpan required = brief.policy().bank().autonomy();
        return SHARES.stream()
                .map(required::times)
                .filter(autonomy -> autonomy.compareTo(MINIMUM) >= 0 && autonomy.compareTo(MAXIMUM) <= 0)
                .flatMap(autonomy -> {
                    if (autonomy.equals(required)) {
                        return Stream.of(of(required, selected));
                    }
                    DesignBrief other = brief.withPolicy(
                            brief.policy().withBank(brief.policy().bank().withAutonomy(autonomy)));
                    return VoltageSearch.cheapest(
                                    evaluation.apply(other), selected.nominalVoltage(), selected.chemistry())
                            .stream()
                            .map(found -> of(autonomy, found));
                })
                .toList();
    }

    private static AutonomyPoint of(TimeSpan autonomy, CandidateSystem found) {
        return new AutonomyPoint(
                autonomy,
                found.price(),
                found.layout().product(),
                found.layout().count(),
                found.charger().array().modules());
    }
}
