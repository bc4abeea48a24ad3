package org.daybank.core.inverter;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Voltage;

/**
 * How the modules of one string inverter are shared among strings and trackers. All modules are connected: where they do not
 * divide evenly, some strings are one module longer than the others and have trackers of their own, for on one tracker all
 * strings must be alike. The fewest strings that the voltages and currents allow are taken.
 *
 * @param leastInSeries shortest string that the tracking window takes in the hottest sun
 * @param mostInSeries longest string that inverter and modules take on the coldest morning
 * @param trackers of the inverter
 * @param stringsOnTracker strings that the currents of a tracker take; at least one
 */
record StringPlan(int leastInSeries, int mostInSeries, int trackers, int stringsOnTracker) {
    private static final double ROUNDING = 1e-12;

    static StringPlan of(GridArray array, StringInverter inverter, GridPolicy policy) {
        InputLimits input = InputLimits.of(inverter, policy);
        Voltage system = array.module().systemVoltage();
        Voltage limit = input.maximum().compareTo(system) < 0 ? input.maximum() : system;
        double byColdest = limit.dividedBy(array.extremes().coldestOpenCircuit());
        double byWindow = input.trackingHighest().dividedBy(array.coldestMaximumPower());
        double byHottest = input.trackingLowest().dividedBy(array.extremes().hottestMaximumPower(1));
        Current operating = array.operatingCurrent();
        double byCurrents = Math.min(
                inverter.maximumInputCurrent().dividedBy(operating),
                inverter.resolved().maximumShortCircuitCurrent().dividedBy(array.shortCircuitCurrent(policy)));
        return new StringPlan(
                (int) Math.max(1, Math.ceil(byHottest - ROUNDING)),
                (int) Math.floor(Math.min(byColdest, byWindow) + ROUNDING),
                inverter.trackers(),
                (int) Math.max(1, Math.floor(byCurrents + ROUNDING)));
    }

    /** The strings of so many modules; where none keep every limit, the shortest that stay within the voltages. */
    List<TrackerStrings> share(int modules) {
        int most = Math.min(modules, trackers * stringsOnTracker);
        for (int strings = 1; strings <= most; strings++) {
            int shortest = modules / strings;
            int longest = (modules + strings - 1) / strings;
            if (shortest >= leastInSeries && longest <= mostInSeries) {
                List<TrackerStrings> shared = spread(modules, strings);
                if (keeps(shared)) {
                    return shared;
                }
            }
        }
        int within = mostInSeries < 1 ? modules : (modules + mostInSeries - 1) / mostInSeries;
        return spread(modules, within);
    }

    private boolean keeps(List<TrackerStrings> shared) {
        return shared.stream().mapToInt(TrackerStrings::trackers).sum() <= trackers
                && shared.stream().allMatch(on -> on.strings() <= stringsOnTracker);
    }

    /** Long strings on some trackers, short ones on the others, so that the fullest tracker has as few as can be. */
    private List<TrackerStrings> spread(int modules, int strings) {
        int shortSeries = modules / strings;
        int longOnes = modules % strings;
        List<TrackerStrings> shared = new ArrayList<>();
        if (longOnes == 0) {
            onTrackers(shared, strings, Math.min(trackers, strings), shortSeries);
            return shared;
        }
        int shortOnes = strings - longOnes;
        int forLong = 1;
        for (int some = 2; some < trackers; some++) {
            if (fullest(longOnes, shortOnes, some) < fullest(longOnes, shortOnes, forLong)) {
                forLong = some;
            }
        }
        onTrackers(shared, longOnes, Math.min(forLong, longOnes), shortSeries + 1);
        onTrackers(shared, shortOnes, Math.min(Math.max(1, trackers - forLong), shortOnes), shortSeries);
        return shared;
    }

    private int fullest(int longOnes, int shortOnes, int forLong) {
        int forShort = Math.max(1, trackers - forLong);
        return Math.max((longOnes + forLong - 1) / forLong, (shortOnes + forShort - 1) / forShort);
    }

    private static void onTrackers(List<TrackerStrings> shared, int strings, int on, int series) {
        int each = strings / on;
        int oneMore = strings % on;
        if (oneMore > 0) {
            shared.add(new TrackerStrings(oneMore, each + 1, series));
        }
        shared.add(new TrackerStrings(on - oneMore, each, series));
    }
}
