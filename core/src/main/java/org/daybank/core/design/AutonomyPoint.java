package org.daybank.core.design;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;

/**
 * What a longer or shorter autonomy costs: the cheapest system of the chosen bus and chemistry that keeps every rule.
 *
 * @param autonomy that its bank is sized with
 * @param price of its parts
 * @param battery model of its batteries
 * @param batteries how many
 * @param modules how many
 */
public record AutonomyPoint(TimeSpan autonomy, Money price, String battery, int batteries, int modules) {
    /** Of the autonomy that was asked for. */
    private static final List<Double> SHARES = List.of(0.5, 1.0, 1.5, 2.0);

    private static final TimeSpan LONGEST = TimeSpan.days(60);
    private static final TimeSpan SHORTEST = TimeSpan.hours(12);

    /**
     * Half to twice the autonomy that was asked for, as far as anything keeps every rule.
     *
     * @param chosen for that autonomy
     * @param search looks for a brief what {@code Search} finds
     */
    static List<AutonomyPoint> around(DesignBrief brief, Candidate chosen, Function<DesignBrief, Search> search) {
        Voltage voltage = chosen.nominalVoltage();
        Chemistry chemistry = chosen.layout().battery().chemistry();
        TimeSpan asked = brief.policy().bank().autonomy();
        return SHARES.stream()
                .map(asked::times)
                .filter(autonomy -> autonomy.compareTo(SHORTEST) >= 0 && autonomy.compareTo(LONGEST) <= 0)
                .flatMap(autonomy -> {
                    if (autonomy.equals(asked)) {
                        return Stream.of(of(asked, chosen));
                    }
                    DesignBrief other = brief.withPolicy(
                            brief.policy().withBank(brief.policy().bank().withAutonomy(autonomy)));
                    return search.apply(other).cheapest(voltage, chemistry).stream()
                            .map(found -> of(autonomy, found));
                })
                .toList();
    }

    private static AutonomyPoint of(TimeSpan autonomy, Candidate found) {
        return new AutonomyPoint(
                autonomy,
                found.price(),
                found.layout().product(),
                found.layout().count(),
                found.charger().array().modules());
    }
}
