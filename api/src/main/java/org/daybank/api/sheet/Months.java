package org.daybank.api.sheet;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.array.ArraySize;
import org.daybank.core.design.BackupDesign;
import org.daybank.core.design.DesignEvidence;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.EnergyBalance;
import org.daybank.core.design.GridDesign;
import org.daybank.core.design.GridEnergy;
import org.daybank.core.design.StandAloneDesign;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Energy;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.simulation.SimulatedMonth;

/** The year month by month: what is needed and what comes in, and how full the bank is. */
final class Months {
    private static final String DAILY = "kWh a day";

    private Months() {}

    static Html of(DesignOutcome design) {
        Html html = new Html();
        if (design instanceof StandAloneDesign standAlone) {
            onBank(html, standAlone.energy(), standAlone.evidence());
        } else if (design instanceof BackupDesign backup) {
            onBank(html, backup.energy(), backup.evidence());
        } else if (design instanceof GridDesign grid) {
            feed(html, grid.energy());
        } else {
            need(html, design.budget().months());
        }
        return html;
    }

    private static void onBank(Html html, EnergyBalance energy, DesignEvidence evidence) {
        balance(html, energy.monthlyBalance());
        evidence.availability()
                .filter(years -> years.months().size() == Month.values().length)
                .ifPresent(years -> charge(html, years));
    }

    private static void balance(Html html, ArraySize balance) {
        List<ArraySize.MonthlyYield> months = balance.months();
        figure(
                html,
                Plot.bars(
                        "balance",
                        "Need and yield by month",
                        "Twelve pairs of bars, the first what is needed a day, the second what the array brings; the"
                                + " table below has the figures.",
                        DAILY,
                        daily(
                                "needed",
                                months.stream()
                                        .map(ArraySize.MonthlyYield::need)
                                        .toList()),
                        daily(
                                "the array brings",
                                months.stream()
                                        .map(ArraySize.MonthlyYield::yield)
                                        .toList())));
        html.table(
                "Mean day of each month",
                List.of("Month", "Needed", "The array brings", "Array to load"),
                months.stream()
                        .map(month -> List.of(
                                Words.of(month.month()),
                                Words.of(month.need()),
                                Words.of(month.yield()),
                                Words.times(month.arrayToLoadRatio())))
                        .toList());
    }

    private static void feed(Html html, GridEnergy feed) {
        List<MonthBudget> months = feed.budget().months();
        figure(
                html,
                Plot.bars(
                        "balance",
                        "Use and yield by month",
                        "Twelve pairs of bars, the first what the loads use a day, the second what the array feeds in;"
                                + " the table below has the figures.",
                        DAILY,
                        daily(
                                "the loads use",
                                months.stream().map(MonthBudget::atLoads).toList()),
                        daily("the array feeds in", feed.dailyYield())));
        List<List<String>> rows = new ArrayList<>();
        for (MonthBudget month : months) {
            rows.add(List.of(
                    Words.of(month.month()),
                    Words.of(month.atLoads()),
                    Words.of(feed.dailyYield().get(month.month().getValue() - 1))));
        }
        html.table("Mean day of each month", List.of("Month", "The loads use", "The array feeds in"), rows);
    }

    private static void need(Html html, List<MonthBudget> months) {
        html.table(
                "What leaves the bank on the mean day of each month",
                List.of("Month", "Energy", "Of the worst run", "After dark"),
                months.stream()
                        .map(month -> List.of(
                                Words.of(month.month()),
                                Words.of(month.dailyEnergy()),
                                Words.of(month.worstDailyEnergy()),
                                Words.percent(month.afterDark())))
                        .toList());
    }

    private static void charge(Html html, Reliability years) {
        List<SimulatedMonth> months = years.months();
        figure(
                html,
                Plot.lines(
                        "charge",
                        "State of charge of the bank by month",
                        "Two lines over twelve months, the mean and the lowest state of charge; the table below has"
                                + " the figures.",
                        new Plot.Series(
                                "mean",
                                months.stream()
                                        .map(month -> month.meanStateOfCharge().percent())
                                        .toList()),
                        new Plot.Series(
                                "lowest of all years",
                                months.stream()
                                        .map(month ->
                                                month.lowestStateOfCharge().percent())
                                        .toList())));
        html.table(
                "The bank hour by hour, by month",
                List.of("Month", "Mean state of charge", "Lowest", "Hours short", "Asked", "Served", "Not used"),
                months.stream()
                        .map(month -> List.of(
                                Words.of(month.month()),
                                Words.percent(month.meanStateOfCharge()),
                                Words.percent(month.lowestStateOfCharge()),
                                Words.hours(month.lossOfLoad()),
                                Words.of(month.demand()),
                                Words.of(month.served()),
                                Words.of(month.spilled())))
                        .toList());
    }

    private static void figure(Html html, Html drawing) {
        html.open("figure").add(drawing).close();
    }

    private static Plot.Series daily(String name, List<Energy> energies) {
        return new Plot.Series(
                name, energies.stream().map(Energy::kilowattHours).toList());
    }
}
