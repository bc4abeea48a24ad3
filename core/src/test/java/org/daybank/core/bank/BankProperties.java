package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/** What holds of every bank. The tolerance of 1e-12 allows for the rounding of a dozen products. */
class BankProperties {
    private static final double ROUNDING = 1e-12;

    @Provide
    static Arbitrary<BankNeed> needs() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 200_000),
                        Arbitraries.of(12, 24, 48),
                        Arbitraries.integers().between(-60, 60),
                        Arbitraries.integers().between(0, 30_000))
                .as((tenths, volts, celsius, watts) -> BankNeedBuilder.builder()
                        .dailyEnergy(Energy.wattHours(tenths / 10.0))
                        .nominalVoltage(Voltage.volts(volts))
                        .lowest(Temperature.celsius(celsius))
                        .runningPower(Power.watts(watts / 10.0))
                        .surgePower(Power.watts(watts))
                        .build());
    }

    @Provide
    static Arbitrary<Battery> batteries() {
        return Arbitraries.of(Batteries.ALL);
    }

    private static double required(
            Chemistry chemistry, double wattHours, double celsius, double days, double surgeWatts) {
        BankDemand demand = BankDemandBuilder.builder()
                .dailyEnergy(Energy.wattHours(wattHours))
                .nominalVoltage(Voltage.volts(24))
                .chemistry(chemistry)
                .lowest(Temperature.celsius(celsius))
                .surgeCurrent(Power.watts(surgeWatts).dividedBy(chemistry.trueNominal(Voltage.volts(24))))
                .build();
        return BankCapacity.needed(demand, BankPolicy.standard().withAutonomy(TimeSpan.days(days)))
                .requiredCapacity()
                .ampereHours();
    }

    @Property(tries = 300)
    void moreLoadMoreAutonomyMoreColdAndMoreSurgeNeverTakeLess(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 1, max = 50_000) double wattHours,
            @ForAll @DoubleRange(min = -7, max = 50) double celsius,
            @ForAll @DoubleRange(min = 0.1, max = 30) double days,
            @ForAll @DoubleRange(min = 0, max = 20_000) double watts,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double capacity = required(chemistry, wattHours, celsius, days, watts);
        double colder = -7 + (celsius + 7) * share;

        assertThat(required(chemistry, wattHours * (1 + share), celsius, days, watts))
                .isGreaterThanOrEqualTo(capacity);
        assertThat(required(chemistry, wattHours, celsius, days * (1 + share), watts))
                .isGreaterThanOrEqualTo(capacity);
        assertThat(required(chemistry, wattHours, celsius, days, watts * (1 + share)))
                .isGreaterThanOrEqualTo(capacity);
        assertThat(required(chemistry, wattHours, colder, days, watts))
                .isGreaterThanOrEqualTo(capacity * (1 - ROUNDING));
    }

    @Property(tries = 300)
    void unitsDoNotMatter(
            @ForAll @IntRange(min = 1, max = 99_999_999) int milliwattHours,
            @ForAll @IntRange(min = -7, max = 40) int celsius,
            @ForAll Chemistry chemistry) {
        BankDemand small = BankDemandBuilder.builder()
                .dailyEnergy(Energy.parse("%d.%03d Wh".formatted(milliwattHours / 1000, milliwattHours % 1000)))
                .nominalVoltage(Voltage.parse("24000 mV"))
                .lowest(Temperature.parse(celsius + " Cel"))
                .chemistry(chemistry)
                .build();
        BankDemand large = BankDemandBuilder.builder()
                .dailyEnergy(
                        Energy.parse("%d.%06d kWh".formatted(milliwattHours / 1_000_000, milliwattHours % 1_000_000)))
                .nominalVoltage(Voltage.parse("24 V"))
                .lowest(Temperature.parse(Integer.toString(celsius + 273) + ".15 K"))
                .chemistry(chemistry)
                .build();
        double one = BankCapacity.needed(small, BankPolicy.standard())
                .requiredCapacity()
                .ampereHours();
        double other = BankCapacity.needed(large, BankPolicy.standard())
                .requiredCapacity()
                .ampereHours();

        // kelvins lose the thirteenth digit of a degree, which is the twelfth of a share
        assertThat(one).isCloseTo(other, within(10 * ROUNDING * other));
    }

    @Property(tries = 300)
    void aLayoutReachesTheNeedAndOneStringLessDoesNot(@ForAll("needs") BankNeed need, @ForAll("batteries") Battery of) {
        BankFit fit = BankFit.of(need, of, BankPolicy.standard());
        BankLayout layout = fit.layout();
        if (layout == null) {
            assertThat(fit.fits()).isFalse();
            return;
        }
        BankCapacity capacity = Objects.requireNonNull(fit.capacity());
        double required = capacity.requiredCapacity().ampereHours();

        // a layout short by no more than rounding counts as reaching it
        assertThat(layout.capacityAt(capacity.demand().runningCurrent()).ampereHours())
                .isGreaterThanOrEqualTo(required * (1 - 2e-9));
        if (fit.fits() && layout.parallel() > 1) {
            Battery less = of.withMostInParallel(layout.parallel() - 1);
            assertThat(BankFit.of(need, less, BankPolicy.standard()).fits()).isFalse();
        }
    }

    /** A start is a constant power: the bus settles at the larger root of {@code U² − U₀·U + P·R = 0}, if there is one. */
    @Property(tries = 300)
    void theBusStaysOverTheCutOffJustWhenTheSagIsAllowed(
            @ForAll("batteries") Battery battery,
            @ForAll @IntRange(min = 100, max = 60_000) int watts,
            @ForAll @DoubleRange(min = 0, max = 0.05) double cableOhms,
            @ForAll @IntRange(min = 15, max = 23) int cutOff) {
        BankNeed need = BankNeedBuilder.builder()
                .dailyEnergy(Energy.wattHours(2400))
                .nominalVoltage(Voltage.volts(24))
                .lowest(Temperature.celsius(20))
                .surgePower(Power.watts(watts))
                .cutOffVoltage(Voltage.volts(cutOff))
                .cableResistance(Resistance.ohms(cableOhms))
                .build();
        BankFit fit = BankFit.of(need, battery, BankPolicy.standard());
        BankLayout layout = Objects.requireNonNull(fit.layout());
        double atRest = layout.trueNominal().volts();
        double ohms = layout.resistance().ohms() * 1.5 + cableOhms;
        double root = atRest * atRest - 4 * watts * ohms;
        boolean over = root >= 0 && (atRest + Math.sqrt(root)) / 2 >= cutOff;

        assertThat(fit.checks().stream()
                        .filter(limit -> limit.rule().code().equals("surgeSag"))
                        .map(Check::passed))
                .containsExactly(over);
    }

    @Property(tries = 300)
    void unevenStringsNeverCarryMore(
            @ForAll("batteries") Battery battery,
            @ForAll @IntRange(min = 1, max = 8) int strings,
            @ForAll @DoubleRange(min = 0.5, max = 1) double factor,
            @ForAll @IntRange(min = -40, max = 50) int celsius) {
        BankLayout even = BankLayout.of(battery, Voltage.volts(24), 2, strings);
        BankLayout uneven = BankLayout.of(battery, Voltage.volts(24), 2, strings, Ratio.of(factor));
        BankLayout more = BankLayout.of(battery, Voltage.volts(24), 2, strings + 1, Ratio.of(factor));
        Temperature cells = Temperature.celsius(celsius);

        assertThat(uneven.maximumDischargeCurrent()).isLessThanOrEqualTo(even.maximumDischargeCurrent());
        assertThat(more.peakDischargeCurrent()).isGreaterThan(uneven.peakDischargeCurrent());
        assertThat(uneven.maximumChargeCurrentAt(cells))
                .isLessThanOrEqualTo(uneven.maximumChargeCurrent())
                .isLessThanOrEqualTo(even.maximumChargeCurrentAt(cells));
    }

    @Property(tries = 300)
    void everyBatteryIsRankedOrRejectedAndTheCheapestComesFirst(@ForAll("needs") BankNeed need) {
        BankSelection selection = BankSelection.of(need, Batteries.ALL, BankPolicy.standard());

        assertThat(Stream.concat(
                        selection.ranked().stream().map(BankFit::product),
                        selection.rejected().stream().map(Rejection::product)))
                .containsExactlyInAnyOrderElementsOf(
                        Batteries.ALL.stream().map(Battery::model).toList());
        assertThat(selection.ranked())
                .allMatch(BankFit::fits)
                .extracting(fit -> Objects.requireNonNull(fit.layout()).price())
                .isSorted();
        assertThat(selection.rejected())
                .allSatisfy(rejection ->
                        assertThat(rejection.failedChecks()).isNotEmpty().noneMatch(check -> check.passed()));
    }

    @Property(tries = 300)
    void aCapacityNeverGrowsWithTheCurrent(
            @ForAll("batteries") Battery battery,
            @ForAll @DoubleRange(min = 0, max = 2000) double amperes,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        BankLayout one = BankLayout.of(battery, Voltage.volts(48), 4, 1);

        assertThat(one.capacityAt(one.maximumDischargeCurrent().times(share * amperes)))
                .isGreaterThanOrEqualTo(
                        one.capacityAt(one.maximumDischargeCurrent().times(amperes)));
        assertThat(one.capacityAt(one.maximumDischargeCurrent().times(amperes)))
                .isLessThanOrEqualTo(battery.capacity().slowest());
    }
}
