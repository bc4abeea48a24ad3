package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;
import org.daybank.core.site.HourCalendar;
import org.junit.jupiter.api.Test;

/** Two years tallied by hand, and what they come to together. */
class ReliabilityTest {
    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final int JANUARY = 0;
    private static final int JULY = 6;

    /** Half full all year but for one hour of July. */
    private static YearTally tally(double inJuly) {
        HourCalendar calendar = new HourCalendar(2001, HourCalendar.COMMON);
        YearTally tally = new YearTally(calendar);
        for (int hour = 0; hour < calendar.hours(); hour++) {
            int month = calendar.date(hour / 24).getMonthValue() - 1;
            tally.level(hour, month, hour == 200 * 24 ? inJuly : 0.5);
        }
        return tally;
    }

    /** A year that lacks 87.6 h of its 8760. */
    private static SimulatedYear first() {
        YearTally tally = tally(0.25);
        tally.array[JANUARY] = 600;
        tally.array[JULY] = 400;
        tally.demand[JANUARY] = 1000;
        tally.served[JANUARY] = 900;
        tally.spilled[JULY] = 50;
        tally.engine[JANUARY] = 100;
        tally.lossHours[JANUARY] = 87.6;
        tally.engineHours[JANUARY] = 2;
        tally.fuelLitres[JANUARY] = 3;
        tally.clipped = 10;
        tally.controllerLoss = 20;
        tally.servedAtBank = 980;
        tally.ownDraw = 30;
        tally.shore = 40;
        tally.batteryLoss = 60;
        tally.outOfBank = 500;
        tally.selfDischarge = 5;
        tally.unservedEssential = 40;
        tally.unservedOther = 60;
        tally.essentialLossHours = 20;
        tally.longestOutage = 12;
        tally.engineStarts = 1;
        return tally.year(0, 250, 105, 90, 7);
    }

    /** A year that lacks three times as much. */
    private static SimulatedYear second() {
        YearTally tally = tally(0.4);
        tally.array[JULY] = 3000;
        tally.demand[JANUARY] = 2000;
        tally.served[JANUARY] = 1400;
        tally.spilled[JULY] = 150;
        tally.lossHours[JANUARY] = 200;
        tally.lossHours[JULY] = 62.8;
        tally.engineHours[JULY] = 4;
        tally.fuelLitres[JULY] = 5;
        tally.clipped = 30;
        tally.servedAtBank = 1400;
        tally.outOfBank = 1500;
        tally.unservedEssential = 20;
        tally.longestOutage = 30;
        return tally.year(1, 250, 0, 0, 0);
    }

    @Test
    void aYearAddsUpItsMonths() {
        SimulatedYear year = first();

        assertThat(year.demand()).isEqualTo(Energy.wattHours(1000));
        assertThat(year.lossOfLoad().hours()).isCloseTo(87.6, ROUNDING);
        assertThat(year.lossOfLoadProbability().fraction()).isCloseTo(0.01, ROUNDING);
        assertThat(year.lossOfEssentialLoad()).isEqualTo(TimeSpan.hours(20));
        assertThat(year.servedShare().fraction()).isCloseTo(0.9, ROUNDING);
        assertThat(year.lowestStateOfCharge()).isEqualTo(Ratio.of(0.25));
        // (8759 · 0.5 + 0.25) / 8760
        assertThat(year.meanStateOfCharge().fraction()).isCloseTo(0.5 - 0.25 / 8760, ROUNDING);
        // 0.5 begins the sixth tenth; 0.25 lies in the third
        assertThat(year.stateOfChargeShares().get(5).fraction()).isCloseTo(8759 / 8760.0, ROUNDING);
        assertThat(year.stateOfChargeShares().get(2).fraction()).isCloseTo(1 / 8760.0, ROUNDING);
        // 500 Wh out of a bank of 250 Wh
        assertThat(year.equivalentFullCycles()).isCloseTo(2, ROUNDING);
        assertThat(year.throughput()).isEqualTo(Energy.wattHours(500));
        assertThat(year.engineStarts()).isEqualTo(1);
        assertThat(year.daysBelowPublished()).isEqualTo(7);
        // July has 744 h, one of them at 0.25
        assertThat(year.months().get(JULY).meanStateOfCharge().fraction()).isCloseTo(0.5 - 0.25 / 744, ROUNDING);
        assertThat(year.months().get(JULY).lowestStateOfCharge()).isEqualTo(Ratio.of(0.25));
        assertThat(year.months().get(JANUARY).lowestStateOfCharge()).isEqualTo(Ratio.of(0.5));
        assertThat(year.months().get(JANUARY).engine()).isEqualTo(Energy.wattHours(100));
    }

    @Test
    void theLedgerHoldsWhatCameAndWhatWent() {
        EnergyLedger ledger = first().ledger();

        assertThat(ledger.array()).isEqualTo(Energy.wattHours(1000));
        // 980 Wh left the bank for 900 Wh at the loads
        assertThat(ledger.conversionLoss()).isEqualTo(Energy.wattHours(80));
        // 1000 + 100 + 40 + 105 = 1245 came or were there; 900 + 80 + 30 + 20 + 10 + 50 + 60 + 5 + 90 = 1245 went or
        // are there
        assertThat(ledger.imbalance()).isZero();
        // one kilowatt-hour in and nothing out is all of it missing
        EnergyLedger lost = new EnergyLedger(
                Energy.kilowattHours(1),
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO,
                Energy.ZERO);
        assertThat(lost.imbalance()).isEqualTo(1);
    }

    @Test
    void severalYearsComeToTheirMeansAndTheirWorst() {
        Reliability both = Reliability.of(List.of(first(), second()));

        assertThat(both.years()).isEqualTo(2);
        // 1 % and 3 %
        assertThat(both.lossOfLoadProbability().mean().fraction()).isCloseTo(0.02, ROUNDING);
        assertThat(both.availability().fraction()).isCloseTo(0.98, ROUNDING);
        // 90 % and 70 %
        assertThat(both.servedShare().mean().fraction()).isCloseTo(0.8, ROUNDING);
        assertThat(both.lossOfLoad().hours()).isCloseTo(175.2, ROUNDING);
        assertThat(both.lossOfEssentialLoad()).isEqualTo(TimeSpan.hours(10));
        assertThat(both.unservedEssential()).isEqualTo(Energy.wattHours(30));
        assertThat(both.unservedOther()).isEqualTo(Energy.wattHours(30));
        assertThat(both.longestOutage()).isEqualTo(TimeSpan.hours(30));
        assertThat(both.lowestStateOfCharge()).isEqualTo(Ratio.of(0.25));
        // 200 of 4000 Wh, and 40
        assertThat(both.spilledShare().fraction()).isCloseTo(0.05, ROUNDING);
        assertThat(both.clippedShare().fraction()).isCloseTo(0.01, ROUNDING);
        // 2 and 6
        assertThat(both.equivalentFullCycles()).isCloseTo(4, ROUNDING);
        assertThat(both.engineTime()).isEqualTo(TimeSpan.hours(3));
        assertThat(both.fuel()).isEqualTo(Volume.litres(4));
        SimulatedMonth january = both.months().get(JANUARY);
        assertThat(january.array()).isEqualTo(Energy.wattHours(300));
        assertThat(january.demand()).isEqualTo(Energy.wattHours(1500));
        assertThat(january.served()).isEqualTo(Energy.wattHours(1150));
        assertThat(january.engine()).isEqualTo(Energy.wattHours(50));
        assertThat(january.lossOfLoad().hours()).isCloseTo(143.8, ROUNDING);
        assertThat(january.engineTime()).isEqualTo(TimeSpan.hours(1));
        assertThat(january.fuel()).isEqualTo(Volume.litres(1.5));
        assertThat(january.meanStateOfCharge().fraction()).isCloseTo(0.5, ROUNDING);
        SimulatedMonth july = both.months().get(JULY);
        assertThat(july.array()).isEqualTo(Energy.wattHours(1700));
        assertThat(july.spilled()).isEqualTo(Energy.wattHours(100));
        assertThat(july.lowestStateOfCharge()).isEqualTo(Ratio.of(0.25));
    }

    @Test
    void withoutAnArrayNothingIsSpilled() {
        SimulatedYear dark = tally(0.5).year(0, 250, 0, 0, 0);
        Reliability none = Reliability.of(List.of(dark));

        assertThat(none.spilledShare()).isEqualTo(Ratio.ZERO);
        assertThat(none.clippedShare()).isEqualTo(Ratio.ZERO);
        // all that nobody asked for was served
        assertThat(dark.servedShare()).isEqualTo(Ratio.ONE);
        assertThat(none.availability()).isEqualTo(Ratio.ONE);
        assertThat(dark.ledger().imbalance()).isZero();
    }
}
