package org.daybank.core.simulation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.kernel.DesignBlock;
import org.daybank.core.simulation.kernel.SequentPeak;
import org.daybank.core.simulation.kernel.SharedFacts;
import org.daybank.core.simulation.kernel.SharedYear;

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
    /** Designs beyond which none are run at once. */
    public static final int MOST = 10_000_000;

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
     * @throws org.daybank.core.schema.InvalidInput when the system is not one that can be run so; everything that stands in
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
     * @throws org.daybank.core.schema.InvalidInput when there are none, one is not above 0, or they make more than
     *     {@value #MOST} designs
     */
    public DesignGrid run(List<Power> arraySizes, List<Energy> bankSizes) {
        checks(arraySizes, bankSizes)
                .that(
                        (long) arraySizes.size() * bankSizes.size() <= MOST,
                        "bankSizes",
                        ProblemCode.OUT_OF_RANGE,
                        () -> "arraySizes times bankSizes must be no more than %s designs, but were %s."
                                .formatted(MOST, (long) arraySizes.size() * bankSizes.size()))
                .done();
        double[] modules = modules(arraySizes);
        double[] banks = banks(bankSizes);
        int designs = modules.length * banks.length;
        double[] allModules = new double[designs];
        double[] allBanks = new double[designs];
        for (int i = 0; i < designs; i++) {
            allModules[i] = modules[i / banks.length];
            allBanks[i] = banks[i % banks.length];
        }
        return new DesignGrid(arraySizes, bankSizes, years.size(), hours(), tally(allModules, allBanks));
    }

    /**
     * For every array the least bank with which loads lack something no more often than asked. One contour for each probability
     * asked; together, a map of the loss-of-load probability over both sizes at the cost of its lines.
     *
     * <p>Found by halving, since more bank never serves less: in the same weather, loads that are never cut off lack less or
     * the same in each hour. Two things may make an exception, where the array hardly fills the bank: a larger bank leaks more,
     * and more of it freezes up. Then it is some bank that does next to one that does not.
     *
     * @param arraySizes power of the modules at standard test conditions; above 0
     * @param bankSizes what the banks on offer hold, ascending; above 0
     * @param lossOfLoadProbabilities asked
     * @throws org.daybank.core.schema.InvalidInput when there are no sizes or probabilities, a size is not above 0, a
     *     probability above 1, or the banks do not ascend
     */
    public List<SizingContour> leastBanks(
            List<Power> arraySizes, List<Energy> bankSizes, List<Ratio> lossOfLoadProbabilities) {
        checkContour(arraySizes, bankSizes, "bankSizes", bankSizes, lossOfLoadProbabilities);
        double[] modules = modules(arraySizes);
        double[] banks = banks(bankSizes);
        Bisection found = Bisection.of(
                modules.length,
                banks.length,
                lossOfLoadProbabilities,
                (array, bank) -> lossOfLoad(pick(modules, array), pick(banks, bank)));
        return found.contours((array, bank) -> new SizingContour.Point(
                arraySizes.get(array), bank < 0 ? null : bankSizes.get(bank), found.figure(array, bank)));
    }

    /**
     * For every bank the least array with which loads lack something no more often than asked; more array never serves less.
     *
     * @param arraySizes power of the modules on offer at standard test conditions, ascending; above 0
     * @param bankSizes what the bank holds; above 0
     * @param lossOfLoadProbabilities asked
     * @throws org.daybank.core.schema.InvalidInput when there are no sizes or probabilities, a size is not above 0, a
     *     probability above 1, or the arrays do not ascend
     */
    public List<SizingContour> leastArrays(
            List<Power> arraySizes, List<Energy> bankSizes, List<Ratio> lossOfLoadProbabilities) {
        checkContour(arraySizes, bankSizes, "arraySizes", arraySizes, lossOfLoadProbabilities);
        double[] modules = modules(arraySizes);
        double[] banks = banks(bankSizes);
        Bisection found = Bisection.of(
                banks.length,
                modules.length,
                lossOfLoadProbabilities,
                (bank, array) -> lossOfLoad(pick(modules, array), pick(banks, bank)));
        return found.contours((bank, array) -> new SizingContour.Point(
                array < 0 ? null : arraySizes.get(array), bankSizes.get(bank), found.figure(bank, array)));
    }

    /**
     * For every array the bank with which loads never lack anything, by one pass over the hours (the sequent peak of Rippl
     * 1883, with the charge that a nearly full bank refuses): what the bank lacks of full never depends on its size, and its
     * greatest lack is the storage needed.
     *
     * <p>The bank begins full, and the uncounted first year counts. Left out of account are self-discharge and the limit of the
     * charging current: where they matter, the bank needed is a little larger than told. What the system's own parts draw counts
     * as a load.
     *
     * @param arraySizes power of the modules at standard test conditions; above 0
     * @throws org.daybank.core.schema.InvalidInput when there are none, or one is not above 0
     */
    public List<ZeroLossBank> zeroLossBanks(List<Power> arraySizes) {
        checks(arraySizes, List.of(bank)).done();
        SequentPeak peak = new SequentPeak(facts, years, settle);
        double[] modules = modules(arraySizes);
        return IntStream.range(0, modules.length)
                .parallel()
                .mapToObj(i -> {
                    SequentPeak.Storage found = peak.of(modules[i]);
                    return new ZeroLossBank(arraySizes.get(i), bank.times(found.banks()), found.sustained());
                })
                .toList();
    }

    private double[] lossOfLoad(double[] modules, double[] banks) {
        double[] hours = tally(modules, banks).lossHours;
        int all = hours();
        return Arrays.stream(hours).map(lost -> lost / all).toArray();
    }

    private static double[] pick(double[] sizes, int[] places) {
        return Arrays.stream(places).mapToDouble(place -> sizes[place]).toArray();
    }

    private static <T extends Comparable<? super T>> void checkContour(
            List<Power> arraySizes, List<Energy> bankSizes, String name, List<T> ladder, List<Ratio> levels) {
        Validation checks = checks(arraySizes, bankSizes).notEmpty("lossOfLoadProbabilities", levels);
        for (int i = 0; i < levels.size(); i++) {
            checks.within("lossOfLoadProbabilities/" + i, levels.get(i), Ratio.ZERO, Ratio.ONE);
        }
        for (int i = 1; i < ladder.size(); i++) {
            checks.above(name + "/" + i, ladder.get(i), ladder.get(i - 1));
        }
        checks.done();
    }

    private static Validation checks(List<Power> arraySizes, List<Energy> bankSizes) {
        Validation checks = new Validation().notEmpty("arraySizes", arraySizes).notEmpty("bankSizes", bankSizes);
        for (int i = 0; i < arraySizes.size(); i++) {
            checks.above("arraySizes/" + i, arraySizes.get(i), Power.ZERO);
        }
        for (int i = 0; i < bankSizes.size(); i++) {
            checks.above("bankSizes/" + i, bankSizes.get(i), Energy.ZERO);
        }
        return checks;
    }

    private double[] modules(List<Power> arraySizes) {
        return arraySizes.stream()
                .mapToDouble(size -> size.watts() / module.watts())
                .toArray();
    }

    private double[] banks(List<Energy> bankSizes) {
        return bankSizes.stream()
                .mapToDouble(size -> size.wattHours() / bank.wattHours())
                .toArray();
    }

    private int hours() {
        return years.stream().mapToInt(SharedYear::hours).sum();
    }

    /** The designs of two lists, pair by pair, in blocks of even size on as many processors as there are. */
    private Tallies tally(double[] modules, double[] banks) {
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
