package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;

/**
 * What holds of every list of loads. The tolerance of 1e-12 allows for the rounding of sums over a few hundred terms of one
 * sign, each good to 1e-16.
 */
class BudgetProperties {
    private static final double ROUNDING = 1e-12;

    /** A made-up load; texts are read, as a brief would be. */
    record Sketch(
            LoadKind kind,
            Supply supply,
            int tenthsOfWatts,
            int count,
            int schedule,
            int daysPerWeek,
            int standbyTenths,
            boolean essential) {

        Load load() {
            return load(1);
        }

        Load load(double factor) {
            return timed(LoadBuilder.builder()
                            .power(Power.watts(tenthsOfWatts / 10.0).times(factor))
                            .standby(Power.watts(standbyTenths / 10.0).times(factor)))
                    .build();
        }

        Load inWatts() {
            return timed(LoadBuilder.builder()
                            .power(Power.parse("%d.%d W".formatted(tenthsOfWatts / 10, tenthsOfWatts % 10)))
                            .standby(Power.parse("%d.%d W".formatted(standbyTenths / 10, standbyTenths % 10))))
                    .build();
        }

        Load inKilowatts() {
            return timed(LoadBuilder.builder()
                            .power(Power.parse("%d.%04d kW".formatted(tenthsOfWatts / 10_000, tenthsOfWatts % 10_000)))
                            .standby(Power.parse("0.%04d kW".formatted(standbyTenths))))
                    .build();
        }

        private LoadBuilder timed(LoadBuilder load) {
            load.name(toString())
                    .kind(kind)
                    .supply(supply)
                    .count(count)
                    .daysPerWeek((double) daysPerWeek)
                    .essential(essential);
            return switch (schedule % 4) {
                case 0 -> load.hoursPerDay((double) schedule);
                case 1 -> load.windows(List.of(new TimeWindow(schedule * 60, 1440)));
                case 2 -> load.windows(List.of(new TimeWindow(1439 - schedule, schedule * 50)));
                default ->
                    load.hourlyFractions(Collections.nCopies(24, Ratio.of(schedule / 24.0)))
                            .monthsOfUse(List.of(Month.of(1 + schedule / 2), Month.DECEMBER));
            };
        }
    }

    @Provide
    static Arbitrary<Sketch> sketches() {
        return Combinators.combine(
                        Arbitraries.of(LoadKind.class),
                        Arbitraries.of(Supply.class),
                        Arbitraries.integers().between(1, 30_000),
                        Arbitraries.integers().between(0, 5),
                        Arbitraries.integers().between(0, 23),
                        Arbitraries.integers().between(1, 7),
                        Arbitraries.integers().between(0, 200),
                        Arbitraries.of(true, false))
                .as(Sketch::new);
    }

    @Provide
    static Arbitrary<List<Sketch>> lists() {
        return sketches().list().ofMinSize(1).ofMaxSize(12);
    }

    private static EnergyBudget budget(List<Load> loads) {
        EnergyDemand demand = EnergyDemandBuilder.builder()
                .loads(loads)
                .latitude(Latitude.degrees(46.87))
                .build();
        // one inverter for all, so that only the loads make the difference
        return LoadProfile.of(demand, LoadPolicy.standard())
                .budget(
                        new InverterCurve(Power.kilowatts(5), Ratio.of(0.01), Ratio.of(0.02), Ratio.of(0.05)),
                        StandingDraw.steady(Power.watts(3)));
    }

    private static EnergyBudget of(List<Sketch> sketches) {
        return budget(sketches.stream().map(Sketch::load).toList());
    }

    @Property(tries = 100)
    void wattsAndKilowattsAreTheSame(@ForAll("lists") List<Sketch> sketches) {
        same(
                budget(sketches.stream().map(Sketch::inWatts).toList()),
                budget(sketches.stream().map(Sketch::inKilowatts).toList()));
    }

    @Property(tries = 100)
    void theOrderOfTheLoadsDoesNotMatter(@ForAll("lists") List<Sketch> sketches, @ForAll Random random) {
        List<Sketch> shuffled = new ArrayList<>(sketches);
        Collections.shuffle(shuffled, random);

        same(of(sketches), of(shuffled));
    }

    private static void same(EnergyBudget one, EnergyBudget other) {
        for (Month month : Month.values()) {
            MonthBudget a = one.in(month);
            MonthBudget b = other.in(month);
            close(a.dailyEnergy(), b.dailyEnergy());
            close(a.worstDailyEnergy(), b.worstDailyEnergy());
            close(a.acEnergy(), b.acEnergy());
            close(a.dcEnergy(), b.dcEnergy());
            close(a.essentialEnergy(), b.essentialEnergy());
            assertThat(a.runningPower().watts())
                    .isCloseTo(b.runningPower().watts(), near(b.runningPower().watts()));
            assertThat(a.afterDark().fraction()).isCloseTo(b.afterDark().fraction(), within(ROUNDING));
        }
        assertThat(one.peak().running().watts())
                .isCloseTo(
                        other.peak().running().watts(),
                        near(other.peak().running().watts()));
        assertThat(one.peak().surge().watts())
                .isCloseTo(
                        other.peak().surge().watts(), near(other.peak().surge().watts()));
        assertThat(one.peak().surgeApparent().voltAmperes())
                .isCloseTo(
                        other.peak().surgeApparent().voltAmperes(),
                        near(other.peak().surgeApparent().voltAmperes()));
    }

    private static void close(Energy a, Energy b) {
        assertThat(a.wattHours()).isCloseTo(b.wattHours(), near(b.wattHours()));
    }

    private static Offset<Double> near(double value) {
        return within(ROUNDING * Math.max(1, Math.abs(value)));
    }

    @Property(tries = 200)
    void oneMoreLoadNeverTakesLess(
            @ForAll("lists") List<Sketch> sketches,
            @ForAll("sketches") Sketch another,
            @ForAll CoincidentStarts coincident) {
        List<Sketch> more = new ArrayList<>(sketches);
        more.add(another);
        EnergyBudget less = of(sketches);
        EnergyBudget all = of(more);

        for (Month month : Month.values()) {
            notLess(
                    all.in(month).dailyEnergy().wattHours(),
                    less.in(month).dailyEnergy().wattHours());
            notLess(
                    all.in(month).worstDailyEnergy().wattHours(),
                    less.in(month).worstDailyEnergy().wattHours());
        }
        PeakLoad before = PeakLoad.of(less.demand().loads(), coincident);
        PeakLoad after = PeakLoad.of(all.demand().loads(), coincident);
        notLess(after.running().watts(), before.running().watts());
        notLess(after.runningApparent().voltAmperes(), before.runningApparent().voltAmperes());
        notLess(after.surge().watts(), before.surge().watts());
        notLess(after.surgeApparent().voltAmperes(), before.surgeApparent().voltAmperes());
    }

    private static void notLess(double more, double less) {
        assertThat(more).isGreaterThanOrEqualTo(less - ROUNDING * less);
    }

    @Property(tries = 100)
    void twiceThePowerTakesTwiceTheEnergyAndTwiceThePeak(@ForAll("lists") List<Sketch> sketches) {
        EnergyBudget once = of(sketches);
        EnergyBudget twice =
                budget(sketches.stream().map(sketch -> sketch.load(2)).toList());

        for (Month month : Month.values()) {
            close(twice.in(month).acEnergy(), once.in(month).acEnergy().times(2));
            close(twice.in(month).dcEnergy(), once.in(month).dcEnergy().times(2));
            // the inverter loses by the square: more than twice, its idle draw and what the system's parts draw apart
            notLess(
                    twice.in(month).dailyEnergy().wattHours(),
                    once.in(month).dailyEnergy().wattHours());
        }
        double surge = once.peak().surgeApparent().voltAmperes();
        assertThat(twice.peak().surgeApparent().voltAmperes()).isCloseTo(2 * surge, near(2 * surge));
    }

    @Property(tries = 200)
    void thePartsOfADayAreItsWhole(@ForAll("lists") List<Sketch> sketches) {
        EnergyBudget budget = of(sketches);
        double table = budget.table().stream()
                .mapToDouble(line -> line.dailyEnergy().wattHours())
                .sum();

        for (MonthBudget month : budget.months()) {
            double atLoads = month.acEnergy().plus(month.dcEnergy()).wattHours();
            double parts = atLoads
                    + month.inverterLoss()
                            .plus(month.wiringLoss())
                            .plus(month.standingEnergy())
                            .wattHours();
            assertThat(month.dailyEnergy().wattHours()).isCloseTo(parts, near(parts));
            notLess(atLoads, month.essentialEnergy().wattHours());
            notLess(month.worstDailyEnergy().wattHours(), month.dailyEnergy().wattHours());
            assertThat(month.afterDark().fraction()).isBetween(0.0, 1 + ROUNDING);
            notLess(month.runningPower().watts(), month.dailyEnergy().wattHours() / 24);
        }
        // all loads are used in December
        close(
                budget.in(Month.DECEMBER)
                        .acEnergy()
                        .plus(budget.in(Month.DECEMBER).dcEnergy()),
                Energy.wattHours(table));
        notLess(
                budget.peak().running().watts(),
                budget.essentialPeak().running().watts());
        notLess(budget.peak().surge().watts(), budget.peak().running().watts());
    }
}
