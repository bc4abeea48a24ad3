package org.daybank.core.sun;

import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.daybank.core.quantity.Irradiation;

/**
 * A plane that is set twice a year: on 1 April and on 1 October, the beginnings of months next to the equinoxes.
 *
 * @param aprilToSeptember the plane as it lies in these months, with its twelve months
 * @param octoberToMarch the plane as it lies in these
 */
public record SeasonalTilt(MonthlySun aprilToSeptember, MonthlySun octoberToMarch) {
    static final Set<Month> APRIL_TO_SEPTEMBER = EnumSet.range(Month.APRIL, Month.SEPTEMBER);
    static final Set<Month> OCTOBER_TO_MARCH = EnumSet.complementOf(EnumSet.range(Month.APRIL, Month.SEPTEMBER));

    /** The twelve months from January, each as the plane then lies. */
    public List<SunMonth> months() {
        return Stream.of(Month.values())
                .map(month ->
                        APRIL_TO_SEPTEMBER.contains(month) ? aprilToSeptember.in(month) : octoberToMarch.in(month))
                .toList();
    }

    /** What falls on the plane in a year of 365 days. */
    public Irradiation yearly() {
        return months().stream().map(SunMonth::wholeMonth).reduce(Irradiation.ZERO, Irradiation::plus);
    }
}
