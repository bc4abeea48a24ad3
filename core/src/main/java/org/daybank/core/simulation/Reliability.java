package org.daybank.core.simulation;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;

/**
 * What some years say together of how far one may rely on a system.
 *
 * @param years how many were run
 * @param availability share of the hours in which every load got all it asked: one less the loss-of-load probability
 * @param lossOfLoadProbability share of the hours in which one did not
 * @param servedShare what the loads got of the energy they asked
 * @param lossOfLoad hours a year in which a load did not get all it asked
 * @param lossOfEssentialLoad hours a year in which an essential load did not
 * @param unservedEssential what the essential loads lacked in a year
 * @param unservedOther what the other loads lacked in a year
 * @param longestOutage of all years
 * @param lowestStateOfCharge of all years
 * @param spilledShare what nobody had use for, of what the array could have brought
 * @param clippedShare what the controllers could not give, of what the array could have brought
 * @param equivalentFullCycles of the bank in a year
 * @param engineTime how long an engine runs in a year
 * @param fuel that it burns in a year
 * @param months means over the years, from January; the lowest state of charge is that of all years
 */
public record Reliability(
        int years,
        Ratio availability,
        ConfidenceInterval lossOfLoadProbability,
        ConfidenceInterval servedShare,
        TimeSpan lossOfLoad,
        TimeSpan lossOfEssentialLoad,
        Energy unservedEssential,
        Energy unservedOther,
        TimeSpan longestOutage,
        Ratio lowestStateOfCharge,
        Ratio spilledShare,
        Ratio clippedShare,
        double equivalentFullCycles,
        TimeSpan engineTime,
        Volume fuel,
        List<SimulatedMonth> months) {
    /** Keeps a copy. */
    public Reliability {
        months = List.copyOf(months);
    }

    /** Of some years, at least one. */
    public static Reliability of(List<SimulatedYear> years) {
        ConfidenceInterval loss = ConfidenceInterval.of(
                years.stream().map(SimulatedYear::lossOfLoadProbability).toList());
        double array = mean(years, year -> year.ledger().array().wattHours());
        return new Reliability(
                years.size(),
                loss.mean().complement(),
                loss,
                ConfidenceInterval.of(
                        years.stream().map(SimulatedYear::servedShare).toList()),
                hours(years, SimulatedYear::lossOfLoad),
                hours(years, SimulatedYear::lossOfEssentialLoad),
                energy(years, SimulatedYear::unservedEssential),
                energy(years, SimulatedYear::unservedOther),
                years.stream()
                        .map(SimulatedYear::longestOutage)
                        .max(Comparator.naturalOrder())
                        .orElseThrow(),
                years.stream()
                        .map(SimulatedYear::lowestStateOfCharge)
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                share(mean(years, year -> year.ledger().spilled().wattHours()), array),
                share(mean(years, year -> year.ledger().clipped().wattHours()), array),
                mean(years, SimulatedYear::equivalentFullCycles),
                hours(years, SimulatedYear::engineTime),
                Volume.litres(mean(years, year -> year.fuel().litres())),
                months(years));
    }

    private static Ratio share(double part, double whole) {
        return Ratio.of(whole == 0 ? 0 : part / whole);
    }

    private static List<SimulatedMonth> months(List<SimulatedYear> years) {
        List<SimulatedMonth> months = new ArrayList<>();
        for (Month month : Month.values()) {
            List<SimulatedMonth> alike = years.stream()
                    .map(year -> year.months().get(month.getValue() - 1))
                    .toList();
            months.add(new SimulatedMonth(
                    month,
                    energy(alike, SimulatedMonth::array),
                    energy(alike, SimulatedMonth::demand),
                    energy(alike, SimulatedMonth::served),
                    energy(alike, SimulatedMonth::spilled),
                    energy(alike, SimulatedMonth::engine),
                    hours(alike, SimulatedMonth::lossOfLoad),
                    alike.stream()
                            .map(SimulatedMonth::lowestStateOfCharge)
                            .min(Comparator.naturalOrder())
                            .orElseThrow(),
                    Ratio.of(mean(alike, one -> one.meanStateOfCharge().fraction())),
                    hours(alike, SimulatedMonth::engineTime),
                    Volume.litres(mean(alike, one -> one.fuel().litres()))));
        }
        return months;
    }

    private static <T> double mean(List<T> all, ToDoubleFunction<T> figure) {
        return all.stream().mapToDouble(figure).average().orElseThrow();
    }

    private static <T> Energy energy(List<T> all, Function<T, Energy> figure) {
        return Energy.wattHours(mean(all, one -> figure.apply(one).wattHours()));
    }

    private static <T> TimeSpan hours(List<T> all, Function<T, TimeSpan> figure) {
        return TimeSpan.hours(mean(all, one -> figure.apply(one).hours()));
    }
}
