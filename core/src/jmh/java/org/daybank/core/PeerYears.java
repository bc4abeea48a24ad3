package org.daybank.core;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.BinaryOperator;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.daybank.core.simulation.kernel.DesignBlock;
import org.daybank.core.simulation.kernel.SharedFacts;
import org.daybank.core.simulation.kernel.SharedFactsBuilder;
import org.daybank.core.simulation.kernel.SharedYear;

/**
 * The same designs through the same year as the kernels in C and NumPy in {@code src/jmh/peers}, for the script there. Prints
 * one line for each way: its name, design-years per second of processor time and of wall time, and sums that must agree.
 */
public final class PeerYears {
    static final int HOURS = 8760;

    private PeerYears() {}

    /** Weather and loads made of whole numbers that every language reckons alike. */
    static SharedYear year() {
        double[] watts = new double[HOURS];
        long dice = 1;
        double day = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            int ofDay = hour % 24;
            if (ofDay == 0) {
                dice = (1103515245 * dice + 12345) % 2147483648L;
                day = 0.1 + 0.9 * dice / 2147483648.0;
            }
            double noon = Math.abs(ofDay - 12);
            double season = 0.6 + 0.4 * (Math.abs(hour - 4380) / 4380.0 * -2 + 1);
            watts[hour] = noon < 6 ? 350 * day * season * (1 - noon * noon / 36) : 0;
        }
        SharedYear year = new SharedYear(watts, new int[] {HOURS});
        for (int hour = 0; hour < HOURS; hour++) {
            year.askedWatts[hour] = hour % 24 >= 17 ? 180 : 100;
            year.perAtBank[hour] = 0.9;
        }
        Arrays.fill(year.floorShare, 0.2);
        Arrays.fill(year.chargeWatts, 7000);
        return year;
    }

    static SharedFacts facts() {
        return SharedFactsBuilder.builder()
                .controllerEfficiency(0.97)
                .ownWatts(0)
                .capacityWattHours(14336)
                .chargeEfficiency(0.95)
                .taperShare(0.99)
                .dischargeWatts(7000)
                .leakShare(4e-5)
                .build();
    }

    static double[] modules(int designs) {
        return IntStream.range(0, designs).mapToDouble(i -> 1 + i % 64 * 0.3).toArray();
    }

    static double[] banks(int designs) {
        return IntStream.range(0, designs)
                .mapToDouble(i -> 0.05 + i / 64 % 64 * 0.05)
                .toArray();
    }

    /** Unserved energy, loss hours, spilled energy, throughput, lowest levels, each summed over all designs. */
    static double[] fast(double[] modules, double[] banks) {
        double[] sums = new double[5];
        int blocks = (modules.length + DesignBlock.MOST - 1) / DesignBlock.MOST;
        for (int block = 0; block < blocks; block++) {
            int from = (int) ((long) modules.length * block / blocks);
            int count = (int) ((long) modules.length * (block + 1) / blocks) - from;
            double[] part = block(modules, banks, from, count);
            for (int k = 0; k < sums.length; k++) {
                sums[k] += part[k];
            }
        }
        return sums;
    }

    private static double[] block(double[] modules, double[] banks, int from, int count) {
        DesignBlock block = new DesignBlock(FACTS);
        block.load(modules, banks, from, count, 1);
        block.year(YEAR);
        double[] sums = new double[5];
        for (int i = 0; i < count; i++) {
            sums[0] += block.unserved[i];
            sums[1] += block.lossHours[i];
            sums[2] += block.spilled[i];
            sums[3] += block.throughput[i];
            sums[4] += block.lowest[i];
        }
        return sums;
    }

    static double[] fastOnTwo(double[] modules, double[] banks) {
        int half = modules.length / 2;
        return IntStream.range(0, 2)
                .parallel()
                .mapToObj(part -> fast(
                        Arrays.copyOfRange(modules, part * half, (part + 1) * half),
                        Arrays.copyOfRange(banks, part * half, (part + 1) * half)))
                .reduce(new double[5], (a, b) -> {
                    double[] sums = a.clone();
                    Arrays.setAll(sums, k -> a[k] + b[k]);
                    return sums;
                });
    }

    /** One design after the other, as one would write it first. */
    static double[] obvious(double[] modules, double[] banks) {
        double[] sums = new double[5];
        for (int i = 0; i < modules.length; i++) {
            double capacity = banks[i] * FACTS.capacityWattHours();
            double level = capacity;
            double lowest = capacity;
            for (int hour = 0; hour < HOURS; hour++) {
                int day = hour / 24;
                double array = modules[i] * YEAR.moduleWatts[hour] * FACTS.controllerEfficiency();
                double asked = YEAR.askedWatts[hour];
                double direct = Math.min(array, asked);
                level -= level * FACTS.leakShare();
                double room = Math.min(banks[i] * FACTS.dischargeWatts(), level - capacity * YEAR.floorShare[day]);
                double out = Math.max(0, Math.min(asked - direct, room));
                double taken = FACTS.taperShare() * Math.max(0, capacity - level) / FACTS.chargeEfficiency();
                double in = Math.min(array - direct, Math.min(banks[i] * YEAR.chargeWatts[day], taken));
                level += in * FACTS.chargeEfficiency() - out;
                double lacks = asked - direct - out;
                sums[0] += lacks * YEAR.perAtBank[hour];
                if (lacks / asked > DesignBlock.ROUNDING) {
                    sums[1]++;
                }
                sums[2] += array - direct - in;
                sums[3] += out;
                lowest = Math.min(lowest, level);
            }
            sums[4] += lowest;
        }
        return sums;
    }

    private static final SharedYear YEAR = year();
    private static final SharedFacts FACTS = facts();

    private static void time(String name, int designs, int repeats, Supplier<double[]> way) {
        double[] sums = {};
        double bestOfProcessor = 0;
        double bestOfWall = 0;
        for (int i = 0; i < repeats; i++) {
            long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            long wall = System.nanoTime();
            sums = way.get();
            double seconds = (System.nanoTime() - wall) / 1e9;
            double used = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor) / 1e9;
            bestOfWall = Math.max(bestOfWall, designs / seconds);
            bestOfProcessor = Math.max(bestOfProcessor, designs / used);
        }
        System.out.printf(
                Locale.ROOT,
                "%s %.0f %.0f %.10g %.0f %.10g %.10g %.10g%n",
                name,
                bestOfProcessor,
                bestOfWall,
                sums[0] / designs,
                sums[1] / designs * 64,
                sums[2] / designs,
                sums[3] / designs,
                sums[4] / designs);
    }

    private static void time(String name, int designs, int repeats, BinaryOperator<double[]> way) {
        double[] modules = modules(designs);
        double[] banks = banks(designs);
        time(name, designs, repeats, () -> way.apply(modules, banks));
    }

    /** Times each way. */
    public static void main(String[] arguments) {
        time("java-fast", 8192, 16, PeerYears::fast);
        time("java-two-threads", 8192, 12, PeerYears::fastOnTwo);
        time("java-obvious", 4096, 3, PeerYears::obvious);
        time("java-fast-100", 100, 300, PeerYears::fast);
        time("java-fast-1000000", 1_000_000, 1, PeerYears::fast);
    }
}
