package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;

/**
 * One microinverter held against an array and a grid: how many it takes, on how many branch circuits, and every rule with its
 * margin.
 *
 * @param product model of the microinverter
 * @param inverter its data sheet
 * @param count how many of it: one for each module, or for each few
 * @param modulesOnEach modules on a full unit
 * @param arrayPower of all modules at standard test conditions
 * @param power of all microinverters
 * @param dcAcRatio power of the modules on a full unit over that of the unit
 * @param lineCurrent what one unit feeds into each of its lines
 * @param mostOnBranch units that a branch circuit takes: by its overcurrent device, {@code I_n / (1.25 · I)}, and by the trunk
 *     cable
 * @param unitsOnLine single-phase units on the fullest line of the service, or all units where each feeds all lines
 * @param branches branch circuits in all
 * @param branchCurrent of the fullest branch circuit
 * @param clipping share of the year's energy lost because a full unit's output is full
 * @param price of all microinverters
 * @param checks every rule, kept or broken
 */
public record MicroinverterFit(
        String product,
        @NotRepeated Microinverter inverter,
        int count,
        int modulesOnEach,
        Power arrayPower,
        Power power,
        Ratio dcAcRatio,
        Current lineCurrent,
        int mostOnBranch,
        int unitsOnLine,
        int branches,
        Current branchCurrent,
        Ratio clipping,
        Money price,
        List<Check> checks)
        implements Assessment {
    /** Keeps a copy. */
    public MicroinverterFit {
        checks = List.copyOf(checks);
    }

    /** The same held against further rules. */
    public MicroinverterFit and(List<Check> further) {
        return new MicroinverterFit(
                product,
                inverter,
                count,
                modulesOnEach,
                arrayPower,
                power,
                dcAcRatio,
                lineCurrent,
                mostOnBranch,
                unitsOnLine,
                branches,
                branchCurrent,
                clipping,
                price,
                Stream.concat(checks.stream(), further.stream()).toList());
    }

    /** Holds a microinverter against an array and a grid. */
    public static MicroinverterFit of(GridService grid, GridArray array, Microinverter inverter, GridPolicy policy) {
        GridRules rules = new GridRules(grid, array, policy);
        int onEach = Math.min(array.modules(), inverter.modulesOnEach());
        int count = (array.modules() + onEach - 1) / onEach;
        Power onOne = array.module().power().times(onEach);
        Ratio ratio = Ratio.of(onOne.dividedBy(inverter.power()));
        Ratio clipping = rules.clipping(inverter, onOne);

        Current current = inverter.lineCurrent(grid.service().voltage());
        int mostOnBranch = mostOnBranch(inverter, current, policy);
        int lines = inverter.phases() == Phases.SINGLE ? grid.service().phases().lines() : 1;
        int unitsOnLine = (count + lines - 1) / lines;
        int branches = 0;
        int onBranch = 0;
        for (int line = 0; line < lines; line++) {
            int here = count / lines + (line < count % lines ? 1 : 0);
            int branchesHere = (here + mostOnBranch - 1) / mostOnBranch;
            branches += branchesHere;
            onBranch = here == 0 ? onBranch : Math.max(onBranch, (here + branchesHere - 1) / branchesHere);
        }

        List<Check> checks = new ArrayList<>();
        rules.judgeService(inverter, count, checks);
        rules.judgeVoltages(InputLimits.of(inverter, policy), 1, 1, checks);
        judgeModule(array, inverter, policy, checks);
        rules.judgeRatio(ratio, checks);
        rules.judgeClipping(clipping, checks);
        Current branchCurrent = current.times(onBranch);
        Current branchLimit =
                policy.branchDevice().dividedBy(policy.continuousFactor().fraction());
        checks.add(Check.atMost(
                GridInverterRule.BRANCH_CURRENT,
                branchCurrent,
                branchLimit,
                value("onBranch", onBranch),
                value("branchDevice", policy.branchDevice())));
        return new MicroinverterFit(
                inverter.model(),
                inverter,
                count,
                onEach,
                array.power(),
                inverter.power().times(count),
                ratio,
                current,
                mostOnBranch,
                unitsOnLine,
                branches,
                branchCurrent,
                clipping,
                inverter.price().times(count),
                checks);
    }

    /** At least one, so that one too many for its device is told as a broken rule. */
    private static int mostOnBranch(Microinverter inverter, Current current, GridPolicy policy) {
        double byDevice = policy.branchDevice()
                .dividedBy(policy.continuousFactor().fraction())
                .dividedBy(current);
        return (int) Math.max(1, Math.min(inverter.mostOnBranch(), Math.floor(byDevice + 1e-12)));
    }

    private static void judgeModule(GridArray array, Microinverter inverter, GridPolicy policy, List<Check> checks) {
        PvModule module = array.module();
        checks.add(Check.atMost(GridInverterRule.MODULE_POWER, module.power(), inverter.maximumModulePower()));
        checks.add(
                Check.atMost(GridInverterRule.INPUT_CURRENT, array.operatingCurrent(), inverter.maximumInputCurrent()));
        checks.add(Check.atMost(
                GridInverterRule.SHORT_CIRCUIT_CURRENT,
                array.shortCircuitCurrent(policy),
                inverter.resolved().maximumShortCircuitCurrent()));
    }
}
