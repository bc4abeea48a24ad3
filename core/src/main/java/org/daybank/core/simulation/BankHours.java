package org.daybank.core.simulation;

import java.util.Optional;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.Battery;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.HourlySeries;

/**
 * How warm a bank is on each day of a year, and what that makes of it. The mass of a bank smooths the hours away: it is as warm
 * as the mean air of the day, or as its room or heater keeps it.
 */
final class BankHours {
    private static final int HOURS_OF_A_DAY = 24;

    /** Share of the rated capacity that can be drawn, by day. */
    final double[] capacityShare;

    /** Most that it may be charged with, in W, by day. */
    final double[] chargeLimit;

    /** What its heater draws, in W, by day. */
    final double[] heater;

    /** Days colder than anything published about its capacity. */
    int unpublishedDays;

    private BankHours(int days) {
        capacityShare = new double[days];
        chargeLimit = new double[days];
        heater = new double[days];
    }

    static BankHours of(BankLayout bank, BankHousing housing, HourlySeries air) {
        BankHours hours = new BankHours(air.size() / HOURS_OF_A_DAY);
        for (int day = 0; day < hours.heater.length; day++) {
            double outside = air.mean(day * HOURS_OF_A_DAY, (day + 1) * HOURS_OF_A_DAY);
            hours.fill(day, bank, housing, around(housing, Temperature.celsius(outside)));
        }
        return hours;
    }

    private static Temperature around(BankHousing housing, Temperature outside) {
        boolean kept = housing.location() == BankLocation.INDOORS && outside.compareTo(housing.indoorLowest()) < 0;
        return kept ? housing.indoorLowest() : outside;
    }

    private void fill(int day, BankLayout bank, BankHousing housing, Temperature around) {
        Battery battery = bank.battery();
        Power builtIn = battery.heater();
        Temperature cells = around;
        if (builtIn != null && around.compareTo(housing.heaterSetPoint()) < 0) {
            Power all = builtIn.times(bank.count());
            Power asked = housing.heatLoss().times(housing.heaterSetPoint().minus(around));
            cells = asked.compareTo(all) <= 0
                    ? housing.heaterSetPoint()
                    : around.plus(all.dividedBy(housing.heatLoss()));
            heater[day] = Math.min(asked.watts(), all.watts());
        }
        Optional<Ratio> share = battery.temperatureFactor(cells);
        unpublishedDays += share.isPresent() ? 0 : 1;
        capacityShare[day] = Math.min(
                1,
                share.orElseGet(() -> battery.resolved()
                                .capacityByTemperature()
                                .points()
                                .get(0)
                                .share())
                        .fraction());
        Current limit = bank.maximumChargeCurrentAt(cells);
        chargeLimit[day] = limit.times(bank.trueNominal()).watts();
    }
}
