package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.load.InverterCurve;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/**
 * One inverter held against a need: how many it takes, how they are joined, and every rule with its margin.
 *
 * @param product model of the inverter
 * @param inverter its data sheet
 * @param count how many of it
 * @param stacking how they are joined
 * @param unitsOnLine how many of them feed the same line
 * @param linePeak peak of the loads on the fullest line
 * @param rating continuous power of all units at 25 °C
 * @param idle draw of all units when on without load
 * @param idleSavedDaily what is saved of that in a day while followers sleep: {@code P_0 · Σ asleep · 1 h}; zero when they
 *     cannot, or when it is not known when the loads run
 * @param currentAtRating current from the bank at its lowest voltage when all units give their continuous power
 * @param chargingCurrent what all chargers give together, no more than the bank takes; absent without AC source or charger
 * @param chargerInput what charging so takes from the AC source: {@code V · I / (η · λ)} at the highest bank voltage
 * @param price of all units
 * @param checks every rule, kept or broken
 */
public record InverterFit(
        String product,
        @NotRepeated Inverter inverter,
        int count,
        Stacking stacking,
        int unitsOnLine,
        PeakLoad linePeak,
        Power rating,
        Power idle,
        Energy idleSavedDaily,
        Current currentAtRating,
        @Nullable Current chargingCurrent,
        @Nullable ApparentPower chargerInput,
        Money price,
        List<Check> checks)
        implements Assessment {
    /** Keeps a copy. */
    public InverterFit {
        checks = List.copyOf(checks);
    }

    /** The same held against further rules. */
    public InverterFit and(List<Check> further) {
        return new InverterFit(
                product,
                inverter,
                count,
                stacking,
                unitsOnLine,
                linePeak,
                rating,
                idle,
                idleSavedDaily,
                currentAtRating,
                chargingCurrent,
                chargerInput,
                price,
                Stream.concat(checks.stream(), further.stream()).toList());
    }

    /** What all units together draw from the bank for what they give, sharing the load equally. */
    public InverterCurve curve() {
        InverterCurve one = inverter.curve();
        return new InverterCurve(one.rating().times(count), one.k0(), one.k1(), one.k2());
    }

    /** Returns whether an inverter is made for the system nominal voltage; where it is not, no number of it fits. */
    public static boolean suits(InverterNeed need, Inverter inverter) {
        return inverter.nominalVoltage().equals(need.nominalVoltage());
    }

    /** Holds an inverter against the need. */
    public static InverterFit of(InverterNeed need, Inverter inverter, InverterPolicy policy) {
        Stack stack = Stack.of(inverter, need.service().phases());
        LineDemand demand = LineDemand.of(need, inverter, stack, policy);
        Ratio left = inverter.heatFactor(need.hottestAir()).times(policy.altitudeFactor(need.elevation()));
        Power power = inverter.power().times(left).times(stack.shareOnLine());
        ApparentPower apparent = inverter.resolved().apparentPower().times(left).times(stack.shareOnLine());
        ApparentPower surge = larger(inverter.surge().over(need.startDuration()).times(stack.shareOnLine()), apparent);
        int onLine = stack.unitsOnLine(Math.max(
                units(demand.power().watts(), power.watts()),
                Math.max(
                        units(demand.apparent().voltAmperes(), apparent.voltAmperes()),
                        units(demand.surge().voltAmperes(), surge.voltAmperes()))));
        int count = stack.units(onLine);

        List<Check> checks = new ArrayList<>();
        checks.add(Check.that(
                InverterRule.NOMINAL_VOLTAGE,
                suits(need, inverter),
                value("nominalVoltage", need.nominalVoltage()),
                value("nominalVoltage2", inverter.nominalVoltage())));
        checks.add(Check.atMost(
                InverterRule.HIGHEST_BANK_VOLTAGE, need.resolved().highestBankVoltage(), inverter.highestInput()));
        checks.add(Check.atMost(
                InverterRule.CONTINUOUS_POWER,
                demand.power(),
                power.times(onLine),
                value("loads", demand.loads()),
                value("margin", policy.margin()),
                value("onLine", onLine)));
        checks.add(Check.atMost(
                InverterRule.CONTINUOUS_APPARENT_POWER,
                demand.apparent(),
                apparent.times(onLine),
                value("loads", demand.loads()),
                value("margin", policy.margin()),
                value("onLine", onLine)));
        checks.add(Check.atMost(
                InverterRule.SURGE,
                demand.surge(),
                surge.times(onLine),
                value("start", demand.start()),
                value("startDuration", need.startDuration()),
                value("onLine", onLine)));
        Power rating = inverter.power().times(count);
        Current currentAtRating =
                rating.dividedBy(inverter.fullLoadEfficiency().fraction()).dividedBy(inverter.lowestInput());
        checks.add(Check.atMost(
                InverterRule.BANK_CURRENT,
                currentAtRating,
                need.bankCurrentLimit(),
                value("count", count),
                value("lowestInput", inverter.lowestInput())));
        ServiceRules.judge(need, inverter, stack, policy, checks);
        AcInput input = AcInput.of(need, inverter, stack, onLine, demand, apparent);
        checks.addAll(input.checks());
        return new InverterFit(
                inverter.model(),
                inverter,
                count,
                stack.stacking(onLine),
                onLine,
                demand.peak(),
                rating,
                inverter.idle().times(count),
                idleSaved(
                        need,
                        inverter,
                        stack,
                        onLine,
                        power.dividedBy(policy.margin().onePlus())),
                currentAtRating,
                input.chargingCurrent(),
                input.chargerInput(),
                inverter.price().times(count),
                checks);
    }

    /** What it gives for good it also gives for a start, however long the start and short the list of surges. */
    private static ApparentPower larger(ApparentPower listed, ApparentPower continuous) {
        return listed.compareTo(continuous) >= 0 ? listed : continuous;
    }

    private static int units(double asked, double one) {
        return one <= 0 ? Integer.MAX_VALUE : (int) Math.min(1000, Math.ceil(asked / one - 1e-9));
    }

    /**
     * In each hour as many units of a line are awake as its share of the hour's peak takes; the first never sleeps. A follower
     * wakes within a cycle or two, so that a start finds all units.
     *
     * @param carriesOnLine what one unit may carry on a line, the policy's margin kept free
     */
    private static Energy idleSaved(
            InverterNeed need, Inverter inverter, Stack stack, int onLine, Power carriesOnLine) {
        List<Power> hours = need.hourlyPeaks();
        if (hours == null || !inverter.followerSleep()) {
            return Energy.ZERO;
        }
        int asleep = 0;
        for (Power hour : hours) {
            int awake = Math.max(1, units(hour.watts() / stack.lines(), carriesOnLine.watts()));
            asleep += stack.units(Math.max(0, onLine - awake));
        }
        return inverter.idle().times(asleep).times(TimeSpan.hours(1));
    }
}
