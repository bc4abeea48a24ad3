package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.simulation.kernel.DesignBlock;
import org.daybank.core.simulation.kernel.SequentPeak;
import org.daybank.core.simulation.kernel.SharedFacts;
import org.daybank.core.simulation.kernel.SharedFactsBuilder;
import org.daybank.core.simulation.kernel.SharedYear;

/** The storage that one pass finds is what the simulation needs: with a trace more nothing is lacking, with a trace less it is. */
class SequentPeakProperties {
    private static final int HOURS = 24 * 90;

    private static double lossHours(SharedFacts facts, SharedYear year, double modules, double banks) {
        DesignBlock block = new DesignBlock(facts);
        block.load(new double[] {modules}, new double[] {banks}, 0, 1, 1);
        block.year(year);
        return block.lossHours[0];
    }

    @Property(tries = 300)
    void isWhatTheSimulationNeeds(
            @ForAll int seed, @ForAll boolean slowToDischarge, @ForAll @DoubleRange(min = 0, max = 10) double modules) {
        Random dice = new Random(seed);
        SharedFacts facts = SharedFactsBuilder.builder()
                .controllerEfficiency(0.95)
                .ownWatts(0)
                .capacityWattHours(1000)
                .chargeEfficiency(0.7 + 0.3 * dice.nextDouble())
                .taperShare(0.1 + 0.9 * dice.nextDouble())
                .dischargeWatts(slowToDischarge ? 20 : 1e9)
                .leakShare(0)
                .build();
        double[] moduleWatts = IntStream.range(0, HOURS)
                .mapToDouble(hour -> 300 * dice.nextDouble() * Math.max(0, Math.cos(Math.PI * (hour % 24 - 12) / 12)))
                .toArray();
        SharedYear year = new SharedYear(moduleWatts, new int[] {HOURS});
        for (int hour = 0; hour < HOURS; hour++) {
            year.askedWatts[hour] = 100 + 100 * dice.nextDouble();
            year.perAtBank[hour] = 1;
        }
        for (int day = 0; day < HOURS / 24; day++) {
            year.floorShare[day] = 0.1 + 0.5 * dice.nextDouble();
            year.chargeWatts[day] = 1e9;
        }

        double banks = new SequentPeak(facts, List.of(year), false).of(modules).banks();

        // in thousands of hours roundings add up to 1e-12 of the bank; an hour counts from 1e-9 of its load
        assertThat(lossHours(facts, year, modules, banks * (1 + 1e-9))).isZero();
        assertThat(lossHours(facts, year, modules, banks * (1 - 1e-6))).isPositive();
    }
}
