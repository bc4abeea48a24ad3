package org.daybank.core.load;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.load.kernel.DemandTable;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.sun.DarkHours;

/**
 * The loads spread over the hours of each month, once for all inverters that may carry them.
 *
 * <p>Two days come out for each month: the mean day sizes the array; a day of the worst run as long as the autonomy sizes
 * the bank, for a load used three days a week may fall on all three days of a run.
 */
public final class LoadProfile {
    private final EnergyDemand demand;
    private final LoadPolicy policy;
    private final PeakLoad peak;
    private final PeakLoad essentialPeak;
    private final List<LoadEnergy> table;
    private final List<HourlyDraw> meanDays = new ArrayList<>();
    private final List<HourlyDraw> worstDays = new ArrayList<>();
    private final List<HourlyDraw> essentialDays = new ArrayList<>();
    private final double[][] darkShares = new double[12][24];

    private LoadProfile(EnergyDemand demand, LoadPolicy policy) {
        this.demand = demand;
        this.policy = policy;
        this.peak = PeakLoad.of(demand.loads(), policy.coincidentStarts());
        this.essentialPeak =
                PeakLoad.of(demand.loads().stream().filter(Load::essential).toList(), policy.coincidentStarts());
        this.table = demand.loads().stream().map(LoadProfile::line).toList();
    }

    /** Spreads the loads of a demand over the hours. */
    public static LoadProfile of(EnergyDemand demand, LoadPolicy policy) {
        LoadProfile profile = new LoadProfile(demand, policy);
        List<Load> loads = demand.loads();
        List<Load> essentials = loads.stream().filter(Load::essential).toList();
        double[][] onShares = onShares(loads);
        double[][] essentialOnShares = onShares(essentials);
        DarkHours nights = DarkHours.at(demand.latitude());
        double runDays = demand.autonomy().days();
        for (Month month : Month.values()) {
            profile.meanDays.add(HourlyDraw.of(loads, onShares, month, LoadProfile::meanDayShare));
            profile.worstDays.add(HourlyDraw.of(loads, onShares, month, load -> load.worstDayShare(runDays)));
            profile.essentialDays.add(HourlyDraw.of(essentials, essentialOnShares, month, LoadProfile::meanDayShare));
            List<Ratio> dark = nights.in(month);
            for (int hour = 0; hour < 24; hour++) {
                profile.darkShares[month.getValue() - 1][hour] = dark.get(hour).fraction();
            }
        }
        return profile;
    }

    private static double meanDayShare(Load load) {
        return load.daysPerWeek() / 7;
    }

    private static double[][] onShares(List<Load> loads) {
        double[][] shares = new double[loads.size()][24];
        for (int i = 0; i < shares.length; i++) {
            for (int hour = 0; hour < 24; hour++) {
                shares[i][hour] = loads.get(i).onShare(hour);
            }
        }
        return shares;
    }

    /** Whether there is any AC load. */
    public boolean needsInverter() {
        return demand.loads().stream().anyMatch(load -> load.supply() == Supply.AC);
    }

    /** What the AC loads ask at one moment. */
    public PeakLoad peak() {
        return peak;
    }

    /** The budget behind an inverter with one stated efficiency and idle draw, while none is chosen. */
    public EnergyBudget budget() {
        return budget(StandingDraw.NONE);
    }

    /** The same, with what the system's own parts draw. */
    public EnergyBudget budget(StandingDraw standing) {
        return budget(stated(), standing);
    }

    /** The losses of an inverter with one stated efficiency and idle draw, while none is chosen. */
    public InverterCurve stated() {
        Power rating = Power.watts(
                Math.max(1, peak.running().watts() * policy.inverterMargin().onePlus()));
        return InverterCurve.stated(rating, policy.inverterIdle(), policy.inverterEfficiency());
    }

    /** The budget behind a chosen inverter, with what the system's own parts draw. */
    public EnergyBudget budget(InverterCurve inverter, StandingDraw standing) {
        List<MonthBudget> months = new ArrayList<>();
        for (Month month : Month.values()) {
            months.add(month(month, inverter, standing));
        }
        return new EnergyBudget(demand, policy, inverter, months, peak, essentialPeak, dcPeak(), table);
    }

    /** What all loads draw behind an inverter, hour by hour on the mean day of each month; for loops over a year. */
    public DemandTable everything(InverterCurve inverter) {
        return table(meanDays, inverter);
    }

    /** The same while only the essential loads are kept. */
    public DemandTable essentials(InverterCurve inverter) {
        return table(essentialDays, inverter);
    }

    private DemandTable table(List<HourlyDraw> days, InverterCurve inverter) {
        DemandTable table = new DemandTable();
        for (int month = 0; month < 12; month++) {
            HourlyDraw draw = days.get(month);
            table.atBank[month] = bankWatts(draw, inverter, 0);
            for (int hour = 0; hour < 24; hour++) {
                table.atLoads[month][hour] = draw.acWatts(hour) + draw.dcWatts(hour);
            }
        }
        return table;
    }

    private MonthBudget month(Month month, InverterCurve inverter, StandingDraw standing) {
        HourlyDraw mean = meanDays.get(month.getValue() - 1);
        double own = standing.meanDay().get(month.getValue() - 1).watts();
        double[] bankWatts = bankWatts(mean, inverter, own);
        double daily = HourlyDraw.daily(bankWatts);
        double ac = mean.acDaily();
        double dc = mean.dcDaily();
        double wiringLoss = dc / policy.dcWiringEfficiency().fraction() - dc;
        HourlyDraw essential = essentialDays.get(month.getValue() - 1);
        return new MonthBudget(
                month,
                Energy.wattHours(daily),
                Energy.wattHours(HourlyDraw.daily(bankWatts(
                        worstDays.get(month.getValue() - 1),
                        inverter,
                        standing.worstRun().get(month.getValue() - 1).watts()))),
                Energy.wattHours(ac),
                Energy.wattHours(dc),
                Energy.wattHours(Math.max(0, daily - ac - dc - wiringLoss - 24 * own)),
                Energy.wattHours(wiringLoss),
                Energy.wattHours(24 * own),
                Energy.wattHours(essential.acDaily() + essential.dcDaily()),
                Ratio.of(daily == 0 ? 0 : afterDark(bankWatts, darkShares[month.getValue() - 1]) / daily),
                Power.watts(daily == 0 ? 0 : squares(mean, bankWatts, inverter) / daily));
    }

    private double[] bankWatts(HourlyDraw draw, InverterCurve inverter, double standingWatts) {
        double[] watts = new double[24];
        for (int hour = 0; hour < 24; hour++) {
            watts[hour] = standingWatts
                    + draw.dcWatts(hour) / policy.dcWiringEfficiency().fraction();
            boolean on = draw.acUsed() && (policy.inverterAlwaysOn() || draw.acWatts(hour) > 0);
            if (on) {
                watts[hour] += inverter.drawWatts(draw.acWatts(hour), draw.acVariance(hour));
            }
        }
        return watts;
    }

    private static double afterDark(double[] bankWatts, double[] darkShare) {
        double dark = 0;
        for (int hour = 0; hour < 24; hour++) {
            dark += bankWatts[hour] * darkShare[hour];
        }
        return dark;
    }

    /** Expected {@code ΣP²t}: the square of the hourly mean plus the variance that switching brings. */
    private double squares(HourlyDraw draw, double[] bankWatts, InverterCurve inverter) {
        double wiring = policy.dcWiringEfficiency().fraction();
        double sum = 0;
        for (int hour = 0; hour < 24; hour++) {
            double slope = 1
                    + inverter.k1().fraction()
                    + 2
                            * inverter.k2().fraction()
                            * draw.acWatts(hour)
                            / inverter.rating().watts();
            sum += bankWatts[hour] * bankWatts[hour]
                    + slope * slope * draw.acVariance(hour)
                    + draw.dcVariance(hour) / (wiring * wiring);
        }
        return sum;
    }

    private Power dcPeak() {
        double watts = demand.loads().stream()
                .filter(load -> load.supply() == Supply.DC)
                .mapToDouble(load -> load.runningPower().watts())
                .sum();
        return Power.watts(watts / policy.dcWiringEfficiency().fraction());
    }

    private static LoadEnergy line(Load load) {
        double hours = load.onHours();
        double running = load.runningPower().watts()
                * hours
                * load.resolved().dutyCycle().fraction();
        double standby = load.standby().watts() * load.count() * (24 - hours);
        return new LoadEnergy(load.name(), Energy.wattHours((running + standby) * meanDayShare(load)));
    }
}
