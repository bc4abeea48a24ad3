package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankUse;
import org.daybank.core.bank.BankUse.Cycles;
import org.daybank.core.bank.BatteryLife;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.simulation.CycleCount;
import org.daybank.core.simulation.SimulatedYear;
import org.daybank.core.simulation.Simulation;
import org.jspecify.annotations.Nullable;

/**
 * What the bank of a design goes through in a year: the cycles that the hours count where they were run, else one discharge a
 * day, as deep as what the month's loads draw after dark.
 */
final class BankYear {
    /** Shallower cycles wear a bank no more than these would. */
    private static final Ratio SHALLOWEST = Ratio.of(0.001);

    private BankYear() {}

    /** How long the bank lasts; nothing when its data sheet does not say. */
    static Optional<BatteryLife> life(DesignBrief brief, CandidateSystem chosen, @Nullable Simulation run) {
        List<Cycles> cycles = run == null ? List.of() : counted(run);
        return BatteryLife.of(
                chosen.layout(),
                new BankUse(cycles.isEmpty() ? nightly(chosen) : cycles, temperatures(brief, chosen)),
                brief.policy().life());
    }

    /** Each tenth of depth with the mean range of its cycles, so that no depth is overstated. */
    private static List<Cycles> counted(Simulation run) {
        List<SimulatedYear> years = run.byYear();
        List<Cycles> mean = new ArrayList<>();
        for (int tenth = 0; tenth < years.get(0).cycles().size(); tenth++) {
            double cycles = 0;
            double ranges = 0;
            for (SimulatedYear year : years) {
                CycleCount count = year.cycles().get(tenth);
                cycles += count.cycles();
                ranges += count.cycles() * count.meanRange().fraction();
            }
            if (cycles > 0) {
                mean.add(new Cycles(deepEnough(ranges / cycles), cycles / years.size()));
            }
        }
        return mean;
    }

    private static List<Cycles> nightly(CandidateSystem chosen) {
        Energy rated = chosen.layout().ratedEnergy();
        List<Cycles> nights = new ArrayList<>();
        for (MonthBudget month : chosen.budget().months()) {
            Energy drawn = month.dailyEnergy().times(month.afterDark());
            nights.add(
                    new Cycles(deepEnough(drawn.dividedBy(rated)), month.month().length(false)));
        }
        return nights;
    }

    private static Ratio deepEnough(double depth) {
        return Ratio.of(Math.max(SHALLOWEST.fraction(), Math.min(1, depth)));
    }

    private static List<Temperature> temperatures(DesignBrief brief, CandidateSystem chosen) {
        BankHousing housing = brief.bank();
        boolean heated = chosen.layout().battery().heater() != null;
        return brief.resolved().site().months().meanAir().stream()
                .map(housing::around)
                .map(air -> heated && air.compareTo(housing.heaterSetPoint()) < 0 ? housing.heaterSetPoint() : air)
                .toList();
    }
}
