package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;

/**
 * One string inverter held against an array and a grid: how many it takes, the strings on each, and every rule with its
 * margin. Of the counts around the DC/AC ratio aimed at it is the one that keeps every rule and is nearest to that ratio;
 * where none does, the checks are those of the count that breaks the fewest rules.
 *
 * @param product model of the inverter
 * @param inverter its data sheet
 * @param count how many of it
 * @param units the strings on each; of the fullest first
 * @param arrayPower of all modules at standard test conditions
 * @param power of all inverters
 * @param dcAcRatio power of the modules over that of the inverters
 * @param stringFuses whether each string needs its own fuse: {@code (N_p − 1) · 1.25 · I_sc > series fuse rating} (IEC 62548-1)
 * @param lineCurrent what one unit feeds into each of its lines
 * @param clipping share of the year's energy lost on the fullest unit because its output is full
 * @param price of all inverters
 * @param checks every rule, kept or broken
 */
public record StringInverterFit(
        String product,
        @NotRepeated StringInverter inverter,
        int count,
        List<UnitStrings> units,
        Power arrayPower,
        Power power,
        Ratio dcAcRatio,
        boolean stringFuses,
        Current lineCurrent,
        Ratio clipping,
        Money price,
        List<Check> checks)
        implements Assessment {
    /** Counts that are tried around the ratio aimed at. */
    private static final int COUNTS = 12;

    /** Keeps copies. */
    public StringInverterFit {
        units = List.copyOf(units);
        checks = List.copyOf(checks);
    }

    /** The same held against further rules. */
    public StringInverterFit and(List<Check> further) {
        return new StringInverterFit(
                product,
                inverter,
                count,
                units,
                arrayPower,
                power,
                dcAcRatio,
                stringFuses,
                lineCurrent,
                clipping,
                price,
                Stream.concat(checks.stream(), further.stream()).toList());
    }

    /** Holds a string inverter against an array and a grid. */
    public static StringInverterFit of(GridService grid, GridArray array, StringInverter inverter, GridPolicy policy) {
        Candidate rules = new Candidate(new GridRules(grid, array, policy), inverter);
        return counts(array, inverter, policy)
                .mapToObj(rules::judge)
                .min(Comparator.comparingLong(StringInverterFit::broken))
                .orElseThrow();
    }

    private long broken() {
        return checks.stream().filter(check -> !check.passed()).count();
    }

    /** Counts within the accepted ratios, those nearest to the aim first; the nearest of all where none is within. */
    private static IntStream counts(GridArray array, StringInverter inverter, GridPolicy policy) {
        double one = array.power().dividedBy(inverter.power());
        double aim = one / policy.dcAcRatio().fraction();
        int around = (int) Math.max(1, Math.min(array.modules(), Math.rint(aim)));
        return IntStream.rangeClosed(Math.max(1, around - COUNTS / 2), Math.min(array.modules(), around + COUNTS / 2))
                .boxed()
                .sorted(Comparator.comparingDouble((Integer count) ->
                                Math.abs(one / count - policy.dcAcRatio().fraction()))
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue);
    }

    /** The rules for one inverter, array and grid. */
    private record Candidate(GridRules rules, StringInverter inverter) {
        StringInverterFit judge(int count) {
            GridArray array = rules.array();
            List<UnitStrings> units = share(count);
            UnitStrings fullest = units.get(0);
            Power power = inverter.power().times(count);
            Ratio ratio = Ratio.of(array.power().dividedBy(power));
            Ratio clipping = rules.clipping(inverter, fullest.power());
            List<Check> checks = new ArrayList<>();
            rules.judgeService(inverter, count, checks);
            rules.judgeVoltages(
                    InputLimits.of(inverter, rules.policy()),
                    units.stream().mapToInt(UnitStrings::longest).max().orElseThrow(),
                    units.stream().mapToInt(UnitStrings::shortest).min().orElseThrow(),
                    checks);
            int strings =
                    units.stream().mapToInt(UnitStrings::mostStrings).max().orElseThrow();
            judgeStrings(units, strings, checks);
            rules.judgeRatio(ratio, checks);
            rules.judgeClipping(clipping, checks);
            return new StringInverterFit(
                    inverter.model(),
                    inverter,
                    count,
                    units,
                    array.power(),
                    power,
                    ratio,
                    array.shortCircuitCurrent(rules.policy())
                                    .times(strings - 1)
                                    .compareTo(array.module().seriesFuse())
                            > 0,
                    inverter.lineCurrent(rules.grid().service().voltage()),
                    clipping,
                    inverter.price().times(count),
                    checks);
        }

        private List<UnitStrings> share(int count) {
            StringPlan plan = StringPlan.of(rules.array(), inverter, rules.policy());
            int each = rules.array().modules() / count;
            int oneMore = rules.array().modules() % count;
            List<UnitStrings> units = new ArrayList<>();
            if (oneMore > 0) {
                units.add(unit(plan, oneMore, each + 1));
            }
            units.add(unit(plan, count - oneMore, each));
            return units;
        }

        private UnitStrings unit(StringPlan plan, int units, int modules) {
            return new UnitStrings(
                    units, modules, rules.array().module().power().times(modules), plan.share(modules));
        }

        private void judgeStrings(List<UnitStrings> units, int strings, List<Check> checks) {
            GridArray array = rules.array();
            int longest = units.stream().mapToInt(UnitStrings::longest).max().orElseThrow();
            checks.add(Check.atMost(
                    GridInverterRule.SYSTEM_VOLTAGE,
                    array.extremes().coldestOpenCircuit(longest),
                    array.module().systemVoltage(),
                    value("longest", longest)));
            int used = units.stream().mapToInt(UnitStrings::trackersUsed).max().orElseThrow();
            checks.add(Check.that(
                    GridInverterRule.TRACKERS,
                    used <= inverter.trackers(),
                    value("used", used),
                    value("trackers", inverter.trackers())));
            Current operating = array.operatingCurrent().times(strings);
            checks.add(Check.atMost(
                            GridInverterRule.INPUT_CURRENT,
                            operating,
                            inverter.maximumInputCurrent(),
                            value("strings", strings))
                    .variant("tracker"));
            Current shortCircuit = array.shortCircuitCurrent(rules.policy()).times(strings);
            checks.add(Check.atMost(
                            GridInverterRule.SHORT_CIRCUIT_CURRENT,
                            shortCircuit,
                            inverter.resolved().maximumShortCircuitCurrent(),
                            value("strings", strings))
                    .variant("tracker"));
            Power most = inverter.maximumArrayPower();
            if (most != null) {
                checks.add(Check.atMost(
                        GridInverterRule.MAXIMUM_ARRAY_POWER, units.get(0).power(), most));
            }
        }
    }
}
