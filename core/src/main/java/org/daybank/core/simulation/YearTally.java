package org.daybank.core.simulation;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;
import org.daybank.core.site.HourCalendar;

/** Adds up the hours of one year. Arrays by month are made once; an hour only adds. */
final class YearTally {
    private static final int TENTHS = 10;

    final double[] array = new double[12];
    final double[] demand = new double[12];
    final double[] served = new double[12];
    final double[] spilled = new double[12];
    final double[] engine = new double[12];
    final double[] lossHours = new double[12];
    final double[] lowest = new double[12];
    final double[] levels = new double[12];
    final double[] engineHours = new double[12];
    final double[] fuelLitres = new double[12];
    private final double[] hours = new double[12];
    private final double[] course;
    private final int[] tenths = new int[TENTHS];

    double clipped;
    double controllerLoss;
    double servedAtBank;
    double ownDraw;
    double shore;
    double batteryLoss;
    double outOfBank;
    double selfDischarge;
    double unservedEssential;
    double unservedOther;
    double essentialLossHours;
    double longestOutage;
    int engineStarts;

    YearTally(HourCalendar calendar) {
        course = new double[calendar.hours()];
        Arrays.fill(lowest, 1);
        for (Month month : Month.values()) {
            hours[month.getValue() - 1] = calendar.endHour(month) - calendar.firstHour(month);
        }
    }

    /** Notes the state of charge at the end of an hour. */
    void level(int hour, int month, double stateOfCharge) {
        course[hour] = stateOfCharge;
        levels[month] += stateOfCharge;
        lowest[month] = Math.min(lowest[month], stateOfCharge);
        tenths[Math.max(0, Math.min(TENTHS - 1, (int) (stateOfCharge * TENTHS)))]++;
    }

    private static double sum(double[] months) {
        double sum = 0;
        for (double value : months) {
            sum += value;
        }
        return sum;
    }

    /** The year that was added up. */
    SimulatedYear year(int number, double capacity, double heldBefore, double heldAfter, int daysBelowPublished) {
        List<Ratio> shares = new ArrayList<>();
        for (int i = 0; i < TENTHS; i++) {
            shares.add(Ratio.of(tenths[i] / (double) course.length));
        }
        double loss = sum(lossHours);
        return new SimulatedYear(
                number,
                ledger(heldBefore, heldAfter),
                Energy.wattHours(sum(demand)),
                Energy.wattHours(unservedEssential),
                Energy.wattHours(unservedOther),
                TimeSpan.hours(loss),
                TimeSpan.hours(essentialLossHours),
                Ratio.of(loss / course.length),
                TimeSpan.hours(longestOutage),
                Ratio.of(Arrays.stream(lowest).min().orElse(1)),
                Ratio.of(sum(levels) / course.length),
                shares,
                Energy.wattHours(outOfBank),
                outOfBank / capacity,
                Rainflow.byTenth(course),
                TimeSpan.hours(sum(engineHours)),
                engineStarts,
                Volume.litres(sum(fuelLitres)),
                daysBelowPublished,
                months());
    }

    private EnergyLedger ledger(double heldBefore, double heldAfter) {
        return new EnergyLedger(
                Energy.wattHours(sum(array)),
                Energy.wattHours(sum(engine)),
                Energy.wattHours(shore),
                Energy.wattHours(sum(served)),
                Energy.wattHours(servedAtBank - sum(served)),
                Energy.wattHours(ownDraw),
                Energy.wattHours(controllerLoss),
                Energy.wattHours(clipped),
                Energy.wattHours(sum(spilled)),
                Energy.wattHours(batteryLoss),
                Energy.wattHours(selfDischarge),
                Energy.wattHours(heldBefore),
                Energy.wattHours(heldAfter));
    }

    private List<SimulatedMonth> months() {
        List<SimulatedMonth> months = new ArrayList<>();
        for (Month month : Month.values()) {
            int i = month.getValue() - 1;
            months.add(new SimulatedMonth(
                    month,
                    Energy.wattHours(array[i]),
                    Energy.wattHours(demand[i]),
                    Energy.wattHours(served[i]),
                    Energy.wattHours(spilled[i]),
                    Energy.wattHours(engine[i]),
                    TimeSpan.hours(lossHours[i]),
                    Ratio.of(lowest[i]),
                    Ratio.of(levels[i] / hours[i]),
                    TimeSpan.hours(engineHours[i]),
                    Volume.litres(fuelLitres[i])));
        }
        return months;
    }
}
