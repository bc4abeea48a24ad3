package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;

/** What holds of the life of every battery in the sample. The tolerance of 1e-9 allows for powers and logarithms. */
class BatteryLifeProperties {
    private static final double ROUNDING = 1e-9;
    private static final LifePolicy POLICY = LifePolicy.standard();

    @Provide
    static Arbitrary<Battery> batteries() {
        return Arbitraries.of(Catalog.sample().batteries());
    }

    private static BatteryLife life(Battery battery, BankUse use) {
        return BatteryLife.of(BankLayout.of(battery, Voltage.volts(48), 1, 1), use, POLICY)
                .orElseThrow();
    }

    @Property(tries = 300)
    void aDeeperDischargeNeverLastsLonger(
            @ForAll("batteries") Battery battery,
            @ForAll @DoubleRange(min = 0.01, max = 1) double depth,
            @ForAll @DoubleRange(min = 0.01, max = 1) double share) {
        CycleLife sheet = Objects.requireNonNull(battery.cycleLife());
        double shallower = Math.max(0.001, depth * share);
        double cycles = sheet.at(Ratio.of(depth));

        assertThat(sheet.at(Ratio.of(shallower))).isGreaterThanOrEqualTo(cycles * (1 - ROUNDING));
    }

    @Property(tries = 300)
    void harderUseAndHeatNeverLastLonger(
            @ForAll("batteries") Battery battery,
            @ForAll @DoubleRange(min = 0.01, max = 1) double depth,
            @ForAll @IntRange(min = -30, max = 50) int celsius,
            @ForAll @IntRange(min = 0, max = 20) int hotter) {
        BankUse use = BankUse.daily(Ratio.of(depth)).withCellTemperatures(List.of(Temperature.celsius(celsius)));
        BankUse hot = use.withCellTemperatures(List.of(Temperature.celsius(celsius + hotter)));
        BankUse more = use.withCycles(List.of(use.cycles().get(0), new BankUse.Cycles(Ratio.of(depth), 10)));

        assertThat(life(battery, hot).life())
                .isLessThanOrEqualTo(life(battery, use).life());
        assertThat(life(battery, more).life())
                .isLessThanOrEqualTo(life(battery, use).life());
    }

    @Property(tries = 300)
    void banksInTurnCoverTheProjectAndOneLessDoesNot(
            @ForAll("batteries") Battery battery,
            @ForAll @DoubleRange(min = 0.01, max = 1) double depth,
            @ForAll @IntRange(min = 1, max = 60) int years) {
        BankLayout bank = BankLayout.of(battery, Voltage.volts(48), 1, 1);
        BatteryLife life = BatteryLife.of(
                        bank, BankUse.daily(Ratio.of(depth)), POLICY.withProjectLife(TimeSpan.years(years)))
                .orElseThrow();

        assertThat((life.replacements() + 1) * life.life().years()).isGreaterThanOrEqualTo(years * (1 - 2e-9));
        assertThat(life.replacements() * life.life().years()).isLessThan(years);
    }

    @Property(tries = 100)
    void twiceTheStringsAtTheSameDepthLastAsLongAndCostTheSameForEachKilowattHour(
            @ForAll("batteries") Battery battery, @ForAll @DoubleRange(min = 0.05, max = 1) double depth) {
        BankUse use = BankUse.daily(Ratio.of(depth));
        BatteryLife one = life(battery, use);
        BatteryLife two = BatteryLife.of(BankLayout.of(battery, Voltage.volts(48), 1, 2), use, POLICY)
                .orElseThrow();

        assertThat(two.life()).isEqualTo(one.life());
        assertThat(two.deliveredOverLife().kilowattHours())
                .isCloseTo(
                        2 * one.deliveredOverLife().kilowattHours(),
                        within(ROUNDING * two.deliveredOverLife().kilowattHours()));
        assertThat(two.costPerKilowattHour()).isEqualTo(one.costPerKilowattHour());
    }
}
