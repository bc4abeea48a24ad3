package org.daybank.core.bank;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/**
 * One battery held against a need: every rule with its margin, and the layout if one can be laid out.
 *
 * @param product model of the battery
 * @param battery its data sheet
 * @param temperature coldest mean temperature of its cells: the surroundings', or the set point of a heater
 * @param heated whether its heater must run
 * @param capacity the rated capacity that the need calls for with this battery; absent when it cannot be told
 * @param layout batteries in series and parallel; absent when none exists
 * @param coldChargeCurrent most that the bank may be charged with at that temperature; absent without a layout
 * @param checks every rule, kept or broken
 * @param advice customs held against it, followed or not; none of them keeps it from fitting
 */
public record BankFit(
        String product,
        @NotRepeated Battery battery,
        Temperature temperature,
        boolean heated,
        @Nullable BankCapacity capacity,
        @Nullable BankLayout layout,
        @Nullable Current coldChargeCurrent,
        List<Check> checks,
        List<Check> advice)
        implements Assessment {
    /** A capacity that falls short of the need by no more than this share reaches it: no string is added for rounding. */
    private static final double ROUNDING = 1e-9;

    /** Keeps copies. */
    public BankFit {
        checks = List.copyOf(checks);
        advice = List.copyOf(advice);
    }

    /** The same held against further rules. */
    public BankFit and(List<Check> further) {
        return new BankFit(
                product,
                battery,
                temperature,
                heated,
                capacity,
                layout,
                coldChargeCurrent,
                Stream.concat(checks.stream(), further.stream()).toList(),
                advice);
    }

    /** Holds a battery against a need: the fewest strings that hold the capacity, give the currents and heat the bank. */
    public static BankFit of(BankNeed need, Battery battery, BankPolicy policy) {
        return of(need, battery, policy, 1);
    }

    /**
     * The same with more strings than the need alone calls for, as an array may whose current fewer do not take.
     *
     * @param leastStrings from 1
     */
    public static BankFit of(BankNeed need, Battery battery, BankPolicy policy, int leastStrings) {
        List<Check> checks = new ArrayList<>();
        boolean heated = battery.heater() != null && need.lowest().compareTo(need.heaterSetPoint()) < 0;
        Temperature temperature = heated ? need.heaterSetPoint() : need.lowest();
        int series = seriesCount(need, battery, checks);
        judgeCold(battery, heated, temperature, policy, checks);
        Optional<Ratio> factor = battery.temperatureFactor(temperature);
        checks.add(
                factor.isPresent()
                        ? Check.that(
                                BankRule.CAPACITY_IN_THE_COLD,
                                true,
                                value("temperature", temperature),
                                value("factor", factor.get()))
                        : Check.that(
                                BankRule.CAPACITY_IN_THE_COLD,
                                false,
                                value("temperature", temperature),
                                value(
                                        "coldest",
                                        battery.resolved()
                                                .capacityByTemperature()
                                                .coldest())));
        if (series == 0 || factor.isEmpty()) {
            return new BankFit(battery.model(), battery, temperature, heated, null, null, null, checks, List.of());
        }
        BankCapacity capacity = BankCapacity.needed(demand(need, battery, temperature, factor.get()), policy);
        Ratio parallelFactor = policy.parallelFactor().of(battery.chemistry().family());
        BankLayout layout = carrying(
                need, lay(capacity, battery, need, series, leastStrings, parallelFactor), parallelFactor, policy);
        checks.add(Check.that(
                BankRule.PARALLEL_STRINGS,
                layout.parallel() <= battery.mostInParallel(),
                value("requiredCapacity", capacity.requiredCapacity()),
                value("parallel", layout.parallel()),
                value("mostInParallel", battery.mostInParallel())));
        checks.addAll(power(need, layout, policy));
        return new BankFit(
                battery.model(),
                battery,
                temperature,
                heated,
                capacity,
                layout,
                layout.maximumChargeCurrentAt(temperature),
                checks,
                advice(layout, policy));
    }

    private static BankDemand demand(BankNeed need, Battery battery, Temperature temperature, Ratio factor) {
        Voltage trueNominal = battery.chemistry().trueNominal(need.nominalVoltage());
        BankNeed.Resolved resolved = need.resolved();
        return BankDemandBuilder.builder()
                .dailyEnergy(need.dailyEnergy())
                .worstDailyEnergy(need.worstDailyEnergy())
                .nominalVoltage(need.nominalVoltage())
                .chemistry(battery.chemistry())
                .lowest(temperature)
                .temperatureFactor(factor)
                .runningCurrent(resolved.runningPower().dividedBy(trueNominal))
                .surgeCurrent(resolved.surgePower().dividedBy(trueNominal))
                .build();
    }

    /** Batteries in a string, or none when the bus voltage is no whole multiple of theirs. */
    private static int seriesCount(BankNeed need, Battery battery, List<Check> checks) {
        int series = battery.seriesFor(need.nominalVoltage());
        int mostInSeries = battery.resolved().mostInSeries();
        checks.add(
                series > 0
                        ? Check.that(
                                BankRule.SERIES_COUNT,
                                series <= mostInSeries,
                                value("series", series),
                                value("nominalVoltage", need.nominalVoltage()),
                                value("mostInSeries", mostInSeries))
                        : Check.that(
                                        BankRule.SERIES_COUNT,
                                        false,
                                        value("nominalVoltage", battery.nominalVoltage()),
                                        value("nominalVoltage2", need.nominalVoltage()))
                                .variant("noMultiple"));
        return series;
    }

    private static void judgeCold(
            Battery battery, boolean heated, Temperature temperature, BankPolicy policy, List<Check> checks) {
        Check charging = Check.atLeast(
                BankRule.CHARGING_TEMPERATURE, temperature, battery.resolved().coldestCharge());
        checks.add(heated ? charging.variant("heated") : charging);
        if (battery.chemistry().family() == BatteryFamily.LEAD_ACID) {
            Temperature freezing =
                    Electrolyte.freezingPoint(policy.depthOfDischarge().leadAcid());
            checks.add(Check.atLeast(
                    BankRule.FREEZING,
                    temperature,
                    freezing,
                    value("leadAcid", policy.depthOfDischarge().leadAcid())));
        }
    }

    /** The fewest strings whose capacity, at the current that each then carries, covers the need. */
    private static BankLayout lay(
            BankCapacity capacity, Battery battery, BankNeed need, int series, int leastStrings, Ratio parallelFactor) {
        Current running = capacity.demand().resolved().runningCurrent();
        Charge required = capacity.requiredCapacity();
        int parallel = (int) Math.max(
                leastStrings, Math.ceil(required.dividedBy(battery.capacity().slowest()) - ROUNDING));
        BankLayout layout = BankLayout.of(battery, need.nominalVoltage(), series, parallel, parallelFactor);
        while (layout.capacityAt(running).compareTo(required.times(1 - ROUNDING)) < 0) {
            layout = BankLayout.of(battery, need.nominalVoltage(), series, layout.parallel() + 1, parallelFactor);
        }
        return layout;
    }

    /** As many strings more as currents and heater call for, up to the most that may be connected. */
    private static BankLayout carrying(BankNeed need, BankLayout fewest, Ratio parallelFactor, BankPolicy policy) {
        Battery battery = fewest.battery();
        BankLayout layout = fewest;
        while (layout.parallel() < battery.mostInParallel()
                && !power(need, layout, policy).stream().allMatch(Check::passed)) {
            layout = BankLayout.of(
                    battery, need.nominalVoltage(), fewest.series(), layout.parallel() + 1, parallelFactor);
        }
        return layout;
    }

    /** What the strings give and take together: rules that another string may meet. */
    private static List<Check> power(BankNeed need, BankLayout layout, BankPolicy policy) {
        List<Check> checks = new ArrayList<>();
        Power heater = layout.battery().heater();
        if (heater != null && need.lowest().compareTo(need.heaterSetPoint()) < 0) {
            Power asked = need.heaterPower(need.lowest());
            Power heaters = heater.times(layout.count());
            checks.add(Check.atMost(BankRule.HEATER_POWER, asked, heaters));
        }
        BankNeed.Resolved resolved = need.resolved();
        Current continuous = resolved.continuousPower().dividedBy(layout.disconnectVoltage());
        checks.add(Check.atMost(BankRule.DISCHARGE_CURRENT, continuous, layout.maximumDischargeCurrent()));
        Current surge = resolved.surgePower().dividedBy(layout.disconnectVoltage());
        Current peak = layout.peakDischargeCurrent();
        checks.add(Check.atMost(BankRule.SURGE_CURRENT, surge, peak));
        judgeSag(need, resolved.surgePower(), layout, policy, checks);
        return checks;
    }

    /**
     * What a start leaves of the bus voltage: the true nominal voltage, about that of a half-empty bank at rest, less
     * {@code I · (R_bank + R_cable)}, with the current that the start draws at the cut-off. Where that lies over the cut-off,
     * the bus stays over it, since the current only falls as the voltage rises.
     */
    private static void judgeSag(
            BankNeed need, Power surgePower, BankLayout layout, BankPolicy policy, List<Check> checks) {
        Voltage cutOff = need.cutOffVoltage();
        if (cutOff == null) {
            return;
        }
        Current surge = surgePower.dividedBy(cutOff);
        Resistance resistance =
                layout.resistance().times(policy.resistanceFactor()).plus(need.cableResistance());
        Voltage left = layout.trueNominal().minus(surge.times(resistance));
        checks.add(Check.atLeast(
                BankRule.SURGE_SAG, left, cutOff, value("surge", surge), value("resistance", resistance)));
    }

    private static List<Check> advice(BankLayout layout, BankPolicy policy) {
        if (layout.battery().chemistry().family() != BatteryFamily.LEAD_ACID) {
            return List.of();
        }
        boolean few = layout.parallel() <= policy.advisedLeadAcidStrings();
        return List.of(Check.that(
                BankRule.LEAD_ACID_STRINGS,
                few,
                value("parallel", layout.parallel()),
                value("advisedLeadAcidStrings", policy.advisedLeadAcidStrings())));
    }
}
