package org.daybank.core.bank;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * How long a bank lasts: worn by its cycles or aged by the calendar, whichever comes first, and what that makes a
 * kilowatt-hour out of it cost.
 *
 * @param bank the bank
 * @param use what it goes through in a year
 * @param policy what was assumed
 * @param fullCyclesPerYear discharges of the whole capacity that pass as much charge, {@code Σ n·d}
 * @param wearPerYear share of its cycles used in a year, {@code Σ n / N(d)} (Miner's sum); absent when the data sheet says
 *     nothing of cycles
 * @param byCycles time until its cycles are used; absent when the data sheet says nothing of cycles
 * @param ageing how many times as fast it ages as at 25 °C
 * @param byCalendar time until it is too old, however little it is used; absent when the data sheet says nothing of it
 * @param life the lesser of the two
 * @param governing which of them it is
 * @param replacements banks to buy after the first within the life of the project
 * @param deliveredPerYear energy it delivers in a year
 * @param deliveredOverLife energy it delivers until it is worn
 * @param costPerKilowattHour its price over the energy delivered over its life, for each kilowatt-hour, to the nearest minor
 *     unit
 */
public record BatteryLife(
        @NotRepeated BankLayout bank,
        BankUse use,
        @NotRepeated LifePolicy policy,
        double fullCyclesPerYear,
        @Nullable Ratio wearPerYear,
        @Nullable TimeSpan byCycles,
        Ratio ageing,
        @Nullable TimeSpan byCalendar,
        TimeSpan life,
        Governing governing,
        int replacements,
        Energy deliveredPerYear,
        Energy deliveredOverLife,
        Money costPerKilowattHour) {
    private static final Temperature REFERENCE = Temperature.celsius(25);
    private static final double TEN_KELVIN = 10;

    /** A bank that serves the whole project but for this share of it is not replaced: that much is rounding. */
    private static final double ROUNDING = 1e-9;

    /** What ends the life of a bank. */
    public enum Governing {
        /** Its cycles are used. */
        CYCLES,
        /** It is too old. */
        CALENDAR
    }

    /** The life of a bank in a use; empty when its data sheet says neither how many cycles it lasts nor how many years. */
    public static Optional<BatteryLife> of(BankLayout bank, BankUse use, LifePolicy policy) {
        CycleLife cycleLife = bank.battery().cycleLife();
        TimeSpan calendarLife = bank.battery().calendarLife();
        Ratio wear = cycleLife == null ? null : wear(use, cycleLife);
        TimeSpan byCycles = wear == null ? null : TimeSpan.years(1 / wear.fraction());
        Ratio ageing = ageing(
                use.cellTemperatures(),
                policy.lifePerTenKelvin().of(bank.battery().chemistry().family()));
        TimeSpan byCalendar = calendarLife == null ? null : TimeSpan.years(calendarLife.years() / ageing.fraction());
        boolean worn = byCycles != null && (byCalendar == null || byCycles.compareTo(byCalendar) <= 0);
        TimeSpan life = worn ? byCycles : byCalendar;
        if (life == null) {
            return Optional.empty();
        }
        double fullCycles = use.fullCyclesPerYear();
        Energy perYear = bank.ratedEnergy().times(fullCycles);
        Energy overLife = perYear.times(life.years());
        return Optional.of(new BatteryLife(
                bank,
                use,
                policy,
                fullCycles,
                wear,
                byCycles,
                ageing,
                byCalendar,
                life,
                worn ? Governing.CYCLES : Governing.CALENDAR,
                (int) Math.ceil(policy.projectLife().dividedBy(life) * (1 - ROUNDING)) - 1,
                perYear,
                overLife,
                new Money(
                        Math.round(bank.price().minorUnits() / overLife.kilowattHours()),
                        bank.price().currency())));
    }

    private static Ratio wear(BankUse use, CycleLife cycleLife) {
        return Ratio.of(use.cycles().stream()
                .mapToDouble(cycle -> cycle.perYear() / cycleLife.at(cycle.depth()))
                .sum());
    }

    /** The mean over the year of {@code f^(−(T − 25 °C) / 10 K)}; cells cooler than 25 °C age no slower. */
    private static Ratio ageing(List<Temperature> cells, Ratio leftPerTenKelvin) {
        double sum = 0;
        for (Temperature temperature : cells) {
            double over = Math.max(0, temperature.minus(REFERENCE).kelvins());
            sum += Math.pow(leftPerTenKelvin.fraction(), -over / TEN_KELVIN);
        }
        return Ratio.of(sum / cells.size());
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        Working.Builder steps = Working.builder();
        CycleLife cycleLife = bank.battery().cycleLife();
        if (cycleLife != null && wearPerYear != null && byCycles != null) {
            for (BankUse.Cycles cycle : use.cycles()) {
                steps.step(
                        "cycles until worn",
                        "N(d), log-log between the points of the data sheet",
                        "data sheet",
                        cycleLife.at(cycle.depth()),
                        "at a depth of %s, from %s",
                        cycle.depth(),
                        cycleLife);
            }
            steps.step("wear in a year", "w = Σ n / N(d)", "Miner's sum", wearPerYear, "%s", wearTerms(cycleLife))
                    .step("life by cycles", "L₁ = 1 a / w", "Miner's sum", byCycles, "1 a / %s", wearPerYear);
        }
        TimeSpan calendarLife = bank.battery().calendarLife();
        if (calendarLife != null && byCalendar != null) {
            steps.step(
                            "ageing",
                            "mean of f^(−max(0, T − 25 °C) / 10 K)",
                            "halving for each 10 K is customary with IEEE 1361",
                            ageing,
                            "f = %s, cells at %s",
                            policy.lifePerTenKelvin()
                                    .of(bank.battery().chemistry().family()),
                            use.cellTemperatures())
                    .step(
                            "life by the calendar",
                            "L₂ = years at 25 °C / ageing",
                            "data sheet",
                            byCalendar,
                            "%s / %s",
                            calendarLife,
                            ageing);
        }
        return steps.step("life", "the lesser", "IEEE 1361", life, "%s", governing)
                .step(
                        "replacements",
                        "project life / life, rounded up, less the first",
                        "one bank after the other",
                        replacements,
                        "%s / %s",
                        policy.projectLife(),
                        life)
                .step(
                        "energy over its life",
                        "E = E_rated · Σ n·d · L",
                        "depths are shares of the rated energy",
                        deliveredOverLife,
                        "%s · %s · %s",
                        bank.ratedEnergy(),
                        fullCyclesPerYear,
                        life)
                .step(
                        "cost for each kilowatt-hour",
                        "price / E",
                        "one bank, without interest",
                        costPerKilowattHour,
                        "%s / %s",
                        bank.price(),
                        deliveredOverLife)
                .build();
    }

    private String wearTerms(CycleLife cycleLife) {
        return String.join(
                " + ",
                use.cycles().stream()
                        .map(cycle -> Ratio.of(cycle.perYear()).significant(4) + " / "
                                + Ratio.of(cycleLife.at(cycle.depth())).significant(4))
                        .toList());
    }
}
