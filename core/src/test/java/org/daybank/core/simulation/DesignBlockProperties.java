package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.simulation.kernel.DesignBlock;
import org.daybank.core.simulation.kernel.SharedFacts;
import org.daybank.core.simulation.kernel.SharedFactsBuilder;
import org.daybank.core.simulation.kernel.SharedYear;

/** Designs side by side bring out what each brings out alone, step by step, to the last bit. */
class DesignBlockProperties {
    private static final int DAYS = 60;
    private static final int HOURS = 24 * DAYS;

    /** What one design brings out alone. */
    private record Alone(double unserved, double lossHours, double spilled, double throughput, double lowest) {}

    @Property(tries = 200)
    void manyAreAsEachAlone(
            @ForAll int seed,
            @ForAll boolean essential,
            @ForAll boolean own,
            @ForAll boolean leaks,
            @ForAll boolean limits,
            @ForAll @IntRange(min = 1, max = DesignBlock.MOST) int count) {
        Random dice = new Random(seed);
        double depth = 0.3 + 0.7 * dice.nextDouble();
        SharedFacts shared = shared(dice, own, leaks, limits);
        SharedYear year = year(dice, depth, limits);
        double[] modules = dice.doubles(count, 0, 8).toArray();
        double[] banks = dice.doubles(count, 0.01, 6).toArray();
        double charge = dice.nextDouble();

        DesignBlock block = new DesignBlock(shared);
        block.load(modules, banks, 0, count, charge);
        block.year(year);

        for (int i : new int[] {0, count / 2, count - 1}) {
            Alone alone = alone(shared, year, essential, modules[i], banks[i], charge);
            assertThat(block.unserved[i]).isEqualTo(alone.unserved());
            assertThat(block.lossHours[i]).isEqualTo(alone.lossHours());
            assertThat(block.spilled[i]).isEqualTo(alone.spilled());
            assertThat(block.throughput[i]).isEqualTo(alone.throughput());
            assertThat(block.lowest[i]).isEqualTo(alone.lowest());
        }
    }

    private static SharedFacts shared(Random dice, boolean own, boolean leaks, boolean limits) {
        return SharedFactsBuilder.builder()
                .controllerEfficiency(0.9 + 0.1 * dice.nextDouble())
                .ownWatts(own ? 20 * dice.nextDouble() : 0)
                .capacityWattHours(1000 + 1000 * dice.nextDouble())
                .chargeEfficiency(0.7 + 0.3 * dice.nextDouble())
                .taperShare(dice.nextBoolean() ? 1 : 0.1 + 0.9 * dice.nextDouble())
                .dischargeWatts(limits ? 100 + 200 * dice.nextDouble() : 1e9)
                .leakShare(leaks ? 0.001 * dice.nextDouble() : 0)
                .build();
    }

    /** Two months of sun, loads and temperatures at random; on some days it is too cold to charge. */
    private static SharedYear year(Random dice, double depth, boolean limits) {
        double[] moduleWatts = IntStream.range(0, HOURS)
                .mapToDouble(hour -> 300 * dice.nextDouble() * Math.max(0, Math.cos(Math.PI * (hour % 24 - 12) / 12)))
                .toArray();
        SharedYear year = new SharedYear(moduleWatts, new int[] {HOURS / 2, HOURS});
        for (int hour = 0; hour < HOURS; hour++) {
            year.askedWatts[hour] = dice.nextInt(5) == 0 ? 0 : 200 * dice.nextDouble();
            year.perAtBank[hour] = 0.8 + 0.2 * dice.nextDouble();
        }
        for (int day = 0; day < DAYS; day++) {
            year.floorShare[day] = 1 - (0.5 + 0.5 * dice.nextDouble()) * depth;
            year.chargeWatts[day] = dice.nextInt(10) == 0 ? 0 : limits ? 200 * dice.nextDouble() : 1e9;
        }
        return year;
    }

    private static Alone alone(
            SharedFacts shared, SharedYear year, boolean essential, double modules, double banks, double charge) {
        StepFacts facts = StepFactsBuilder.builder()
                .capacity(banks * shared.capacityWattHours())
                .otherDepth(1)
                .essentialDepth(1)
                .rise(0)
                .chargeEfficiency(shared.chargeEfficiency())
                .dischargeEfficiency(1)
                .dischargeLimit(banks * shared.dischargeWatts())
                .taperShare(shared.taperShare())
                .leakShare(shared.leakShare())
                .engineWatts(0)
                .build();
        BankStore store = new BankStore(facts.capacity(), null);
        store.fill(charge);
        HourlyStep step = new HourlyStep(facts, store, null);
        double unserved = 0;
        double lossHours = 0;
        double[] spilled = new double[2];
        double throughput = 0;
        double lowest = facts.capacity();
        for (int hour = 0; hour < HOURS; hour++) {
            int day = hour / 24;
            // with a depth of one, what can be drawn is the share of the day
            step.day(1 - year.floorShare[day], banks * year.chargeWatts[day]);
            double array = year.moduleWatts[hour] * modules * shared.controllerEfficiency();
            double asked = year.askedWatts[hour];
            step.step(array, shared.ownWatts(), essential ? asked : 0, essential ? 0 : asked, 0);
            double lacked = step.lackedEssential + step.lackedOther;
            unserved += year.perAtBank[hour] * lacked;
            lossHours += lacked > DesignBlock.ROUNDING * asked ? 1 : 0;
            spilled[hour < HOURS / 2 ? 0 : 1] += step.spilled;
            throughput += step.outOfBank;
            lowest = Math.min(lowest, store.level());
        }
        return new Alone(unserved, lossHours, spilled[0] + spilled[1], throughput, lowest);
    }
}
