package org.daybank.core.simulation;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.simulation.kernel.DesignBlock;
import org.daybank.core.simulation.kernel.SharedFacts;
import org.daybank.core.simulation.kernel.SharedYear;
import org.daybank.core.working.Checks;

/**
 * One system with its array and its bank in many sizes, through the same hours; thousands of times faster than one
 * {@link Simulator} after the other, and with the same numbers to the last bit where both can tell.
 *
 * <p>Such systems have a tracking controller, one well in the bank, no engine, no shore power and no alternator, no bank
 * heater; all their loads are essential or none; loads are never cut off ({@code reconnectRise} 0) and the bank's losses fall
 * on charging ({@code dischargeLossShare} 0). Sizes need not be whole modules or batteries. Whatever their size, there are
 * controllers enough to give what the array brings, of which the system's own number draw their own consumption; a bank's
 * limits of charge and discharge grow with it. Safe for any number of threads.
 */
public final class ManyDesigns {
    private final Power module;
    private final Energy bank;
    private final double charge;
    private final boolean settle;
    private final SharedFacts facts;
    private final List<SharedYear> years;

    private ManyDesigns(
            Power module, Energy bank, double charge, boolean settle, SharedFacts facts, List<SharedYear> years) {
        this.module = module;
        this.bank = bank;
        this.charge = charge;
        this.settle = settle;
        this.facts = facts;
        this.years = List.copyOf(years);
    }

    /**
     * Of a system, in whatever size.
     *
     * @param system whose parts all designs are made of
     * @param array what one of its modules brings
     * @param snowLoss share of the yield that is lost under snow, twelve from January
     * @throws org.daybank.core.working.InvalidInput when the system is not one that can be run so; everything that stands in
     *     the way is named
     */
    public static ManyDesigns of(
            SimulatedSystem system,
            ArrayYears array,
            List<Ratio> snowLoss,
            ArrayPolicy arrayPolicy,
            SimulationPolicy policy) {
        SteadySystem steady = SteadySystem.of(system, array, snowLoss, policy);
        return new ManyDesigns(
                system.array().module().power(),
                Energy.wattHours(steady.facts().capacity()),
                policy.initialCharge().fraction(),
                policy.settle(),
                steady.shared(),
                IntStream.range(0, array.count())
                        .mapToObj(year -> steady.year(year, array, snowLoss, arrayPolicy))
                        .toList());
    }

    /** What the system's own bank holds at the current that its loads draw: the bank size that stands for itself. */
    public Energy bankOfTheSystem() {
        return bank;
    }

    /**
     * Runs every array size with every bank size.
     *
     * @param arraySizes power of the modules at standard test conditions; above 0
     * @param bankSizes what the bank holds at the current that the loads draw; above 0
     * @throws org.daybank.core.working.InvalidInput when there are none, or one is not above 0
     */
    public DesignGrid run(List<Power> arraySizes, List<Energy> bankSizes) {
        check(arraySizes, bankSizes);
        double[] modules = modules(arraySizes);
        double[] banks = banks(bankSizes);
        int designs = Math.multiplyExact(modules.length, banks.length);
        double[] allModules = new double[designs];
        double[] allBanks = new double[designs];
        for (int i = 0; i < designs; i++) {
            allModules[i] = modules[i / banks.length];
            allBanks[i] = banks[i % banks.length];
        }
        return new DesignGrid(arraySizes, bankSizes, years.size(), hours(), tally(allModules, allBanks));
    }

    static void check(List<Power> arraySizes, List<Energy> bankSizes) {
        Checks checks = new Checks().notEmpty("arraySizes", arraySizes).notEmpty("bankSizes", bankSizes);
        for (int i = 0; i < arraySizes.size(); i++) {
            checks.above("arraySizes/" + i, arraySizes.get(i), Power.ZERO);
        }
        for (int i = 0; i < bankSizes.size(); i++) {
            checks.above("bankSizes/" + i, bankSizes.get(i), Energy.ZERO);
        }
        checks.done();
    }

    double[] modules(List<Power> arraySizes) {
        return arraySizes.stream()
                .mapToDouble(size -> size.watts() / module.watts())
                .toArray();
    }

    double[] banks(List<Energy> bankSizes) {
        return bankSizes.stream()
                .mapToDouble(size -> size.wattHours() / bank.wattHours())
                .toArray();
    }

    int hours() {
        return years.stream().mapToInt(SharedYear::hours).sum();
    }

    SharedFacts facts() {
        return facts;
    }

    List<SharedYear> years() {
        return years;
    }

    /** The designs of two lists, pair by pair, in blocks of even size on as many processors as there are. */
    Tallies tally(double[] modules, double[] banks) {
        Tallies tallies = new Tallies(modules.length);
        int blocks = (modules.length + DesignBlock.MOST - 1) / DesignBlock.MOST;
        IntStream.range(0, blocks).parallel().forEach(block -> {
            int from = (int) ((long) modules.length * block / blocks);
            int end = (int) ((long) modules.length * (block + 1) / blocks);
            tally(modules, banks, from, end - from, tallies);
        });
        return tallies;
    }

    private void tally(double[] modules, double[] banks, int from, int count, Tallies tallies) {
        DesignBlock block = new DesignBlock(facts);
        block.load(modules, banks, from, count, charge);
        if (settle) {
            block.year(years.get(0));
        }
        for (int i = 0; i < count; i++) {
            tallies.lowest[from + i] = 1;
        }
        for (SharedYear year : years) {
            block.year(year);
            for (int i = 0; i < count; i++) {
                int design = from + i;
                tallies.lossHours[design] += block.lossHours[i];
                tallies.unserved[design] += block.unserved[i];
                tallies.spilled[design] += block.spilled[i];
                tallies.throughput[design] += block.throughput[i];
                double lowest = block.lowest[i] / (banks[design] * facts.capacityWattHours());
                tallies.lowest[design] = Math.min(tallies.lowest[design], lowest);
            }
        }
    }
}
