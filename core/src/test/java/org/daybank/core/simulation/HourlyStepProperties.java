package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/** Months of random hours: what comes in goes out, the bank stays within its walls, and more never serves less. */
class HourlyStepProperties {
    private static final int HOURS = 720;

    private static StepFacts facts(Random dice, double capacity, boolean cutOff, boolean leaks) {
        double out = 0.7 + 0.3 * dice.nextDouble();
        return StepFactsBuilder.builder()
                .capacity(capacity)
                .otherDepth(0.2 + 0.6 * dice.nextDouble())
                .essentialDepth(0.8 + 0.2 * dice.nextDouble())
                .rise(cutOff ? capacity * 0.1 : 0)
                .chargeEfficiency(0.7 + 0.3 * dice.nextDouble())
                .dischargeEfficiency(out)
                .dischargeLimit(1e9)
                .taperShare(0.1 + 0.9 * dice.nextDouble())
                .leakShare(leaks ? 0.001 * dice.nextDouble() : 0)
                .engineWatts(0)
                .build();
    }

    /** What came of a month of random hours, each of which closes. */
    private static double[] month(
            StepFacts facts,
            @Nullable KineticWells wells,
            double arrayScale,
            double chargeLimit,
            int seed,
            boolean steady) {
        Random dice = new Random(seed);
        BankStore store = new BankStore(facts.capacity(), wells);
        store.fill(1);
        HourlyStep step = new HourlyStep(facts, store, null);
        double essential = 0;
        double other = 0;
        double own = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            if (hour % 24 == 0) {
                step.day(steady ? 0.8 : 0.6 + 0.4 * dice.nextDouble(), chargeLimit);
            }
            double array = arrayScale * Math.max(0, Math.cos(Math.PI * (hour % 24 - 12) / 12)) * dice.nextDouble();
            double shore = dice.nextInt(10) == 0 ? 40 : 0;
            double[] asked = {5 * dice.nextDouble(), 50 * dice.nextDouble(), 80 * dice.nextDouble()};
            double before = store.level();

            step.step(array, asked[0], asked[1], asked[2], shore);

            essential += step.servedEssential;
            other += step.servedOther;
            own += step.servedOwn;
            double in = array - step.spilled + step.fromShore + step.outOfBank;
            double used = step.servedOwn + step.servedEssential + step.servedOther + step.intoBank;
            assertThat(in).isCloseTo(used, within(1e-9 * (1 + in)));
            assertThat(store.level() - before)
                    .isCloseTo(
                            step.intoBank * facts.chargeEfficiency()
                                    - step.outOfBank / facts.dischargeEfficiency()
                                    - step.leaked,
                            within(1e-9 * facts.capacity()));
            assertThat(store.level()).isBetween(-1e-9 * facts.capacity(), facts.capacity() * (1 + 1e-12));
            assertThat(step.servedEssential).isBetween(0.0, asked[1] + 1e-12);
            assertThat(step.servedOther).isBetween(0.0, asked[2] + 1e-12);
            assertThat(step.spilled).isGreaterThanOrEqualTo(0);
            assertThat(step.intoBank).isBetween(0.0, chargeLimit + 1e-9);
        }
        return new double[] {essential, own + essential + other, store.level()};
    }

    @Property
    void everyHourClosesAndTheBankStaysWithinItsWalls(
            @ForAll int seed,
            @ForAll @DoubleRange(min = 1, max = 1e5) double capacity,
            @ForAll @DoubleRange(min = 0, max = 2000) double array,
            @ForAll boolean cutOff,
            @ForAll boolean twoWells) {
        StepFacts facts = facts(new Random(seed), capacity, cutOff, true);
        KineticWells wells = twoWells ? new KineticWells(Ratio.of(0.3), 0.6) : null;

        double[] served = month(facts, wells, array, capacity / 4, seed, false);

        assertThat(served[1]).isGreaterThanOrEqualTo(served[0]);
    }

    /**
     * For loads that are never cut off, a bank that does not leak and a steady temperature. Each of the three can make a larger
     * bank serve a little less: it leaks more, what the cold locks up in it is more, and loads come back at another hour.
     */
    @Property
    void moreArrayNeverServesLess(
            @ForAll int seed,
            @ForAll @DoubleRange(min = 1, max = 1e4) double capacity,
            @ForAll @DoubleRange(min = 0, max = 2000) double array,
            @ForAll @DoubleRange(min = 1, max = 3) double more) {
        StepFacts facts = facts(new Random(seed), capacity, false, false);

        double[] less = month(facts, null, array, 1e9, seed, true);
        double[] larger = month(facts, null, array * more, 1e9, seed, true);

        assertThat(larger[0]).isGreaterThanOrEqualTo(less[0] - 1e-6);
        assertThat(larger[1]).isGreaterThanOrEqualTo(less[1] - 1e-6);
    }

    @Property
    void moreBankNeverServesLess(
            @ForAll int seed,
            @ForAll @DoubleRange(min = 1, max = 1e4) double capacity,
            @ForAll @DoubleRange(min = 0, max = 2000) double array,
            @ForAll @DoubleRange(min = 1, max = 3) double more) {
        StepFacts facts = facts(new Random(seed), capacity, false, false);

        double[] less = month(facts, null, array, 1e9, seed, true);
        double[] larger = month(facts.withCapacity(capacity * more), null, array, 1e9, seed, true);

        assertThat(larger[1]).isGreaterThanOrEqualTo(less[1] - 1e-6);
    }

    @Property(tries = 200)
    void twoWellsThatLevelAtOnceAreOne(
            @ForAll int seed,
            @ForAll @DoubleRange(min = 10, max = 1e4) double capacity,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double width,
            @ForAll @IntRange(min = 100, max = 1500) int array) {
        StepFacts facts = facts(new Random(seed), capacity, false, true);

        double[] one = month(facts, null, array, capacity, seed, false);
        double[] two = month(facts, new KineticWells(Ratio.of(width), 1e9), array, capacity, seed, false);

        // what is still on its way after an hour is of the order of 1/k
        assertThat(two[1]).isCloseTo(one[1], within(1e-5 * (1 + one[1])));
        assertThat(two[2]).isCloseTo(one[2], within(1e-5 * capacity));
    }
}
