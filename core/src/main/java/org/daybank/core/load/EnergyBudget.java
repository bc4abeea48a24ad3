package org.daybank.core.load;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Working;

/**
 * What leaves the bank each day of each month, what the inverter must carry, and what it must start.
 *
 * @param demand what was asked
 * @param policy what was assumed
 * @param inverter the losses that AC loads cause
 * @param months one for each month, from January
 * @param peak the most that AC loads ask at one moment
 * @param essentialPeak the same for the essential loads alone
 * @param dcPeak power that leaves the bank when every DC load runs
 * @param table what each load takes on a mean day
 */
public record EnergyBudget(
        @NotRepeated EnergyDemand demand,
        @NotRepeated LoadPolicy policy,
        InverterCurve inverter,
        List<MonthBudget> months,
        PeakLoad peak,
        PeakLoad essentialPeak,
        Power dcPeak,
        List<LoadEnergy> table) {
    private static final String ENERGY_SOURCE = "definition; IEEE 1562 load table";

    /** Keeps copies. */
    public EnergyBudget {
        months = List.copyOf(months);
        table = List.copyOf(table);
    }

    /** The budget while no inverter is chosen: one stated efficiency, one stated idle draw. */
    public static EnergyBudget of(EnergyDemand demand, LoadPolicy policy) {
        return LoadProfile.of(demand, policy).budget();
    }

    /** The budget of a month. */
    public MonthBudget in(Month month) {
        return months.get(month.getValue() - 1);
    }

    /** The month whose mean day draws the most. */
    public MonthBudget heaviestMonth() {
        return heaviest(Comparator.comparing(MonthBudget::dailyEnergy));
    }

    /** The month whose worst run draws the most: the one that sizes the bank. */
    public MonthBudget heaviestRun() {
        return heaviest(Comparator.comparing(MonthBudget::worstDailyEnergy));
    }

    private MonthBudget heaviest(Comparator<MonthBudget> order) {
        // the first of equals, so that the answer does not depend on rounding elsewhere
        return Objects.requireNonNull(months.stream()
                .reduce((most, month) -> order.compare(month, most) > 0 ? month : most)
                .orElse(null));
    }

    /** The loads that object to a modified sine, by name. */
    public List<String> sineLoads() {
        return demand.loads().stream()
                .filter(load -> load.supply() == Supply.AC && load.resolved().waveform() == Waveform.SINE)
                .map(Load::name)
                .toList();
    }

    /** The steps, as one would write them on paper: each load, then the heaviest month. */
    public Working working() {
        Working.Builder working = Working.builder();
        for (int i = 0; i < table.size(); i++) {
            Load load = demand.loads().get(i);
            working.step(
                    "mean day of " + load.name(),
                    "E = n · (P·h·duty + P_standby·(24 − h)) · d/7",
                    ENERGY_SOURCE,
                    table.get(i).dailyEnergy(),
                    "%s · (%s·%s h·%s + %s·(24 − %s)) · %s/7",
                    load.count(),
                    load.power(),
                    load.onHours(),
                    load.resolved().dutyCycle(),
                    load.standby(),
                    load.onHours(),
                    load.daysPerWeek());
        }
        MonthBudget month = heaviestMonth();
        return working.step(
                        "energy at the bank in " + month.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                        "E_bank = E_dc + wiring loss + E_ac + inverter loss + own parts",
                        "IEEE 1562; inverter loss by Schmidt and Sauer 1996",
                        month.dailyEnergy(),
                        "%s + %s + %s + %s + %s",
                        month.dcEnergy(),
                        month.wiringLoss(),
                        month.acEnergy(),
                        month.inverterLoss(),
                        month.standingEnergy())
                .step(
                        "running apparent power",
                        "S = √((ΣP)² + (ΣP·tan φ)²)",
                        "definition of apparent power",
                        peak.runningApparent(),
                        "from %s of everything that may run in one hour",
                        peak.running())
                .step(
                        "surge",
                        "S_start = starting multiple · S_running, everything else running",
                        "manufacturers' motor data",
                        peak.surgeApparent(),
                        "coincident starts: %s; real power %s",
                        policy.coincidentStarts(),
                        peak.surge())
                .build();
    }
}
