package org.daybank.core.load;

import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Power;

/**
 * The most that the AC loads ask at one moment, over all hours and months; hours come from schedules where they are known,
 * loads without a known time may run at any hour.
 *
 * @param running real power of everything that may run in the same hour
 * @param runningApparent the same in volt-amperes: {@code S = √((ΣP)² + (ΣP·tan φ)²)}
 * @param surge real power while the coincident starts happen and everything else keeps running
 * @param surgeApparent the same in volt-amperes
 */
public record PeakLoad(Power running, ApparentPower runningApparent, Power surge, ApparentPower surgeApparent) {
    /** No AC load at all. */
    public static final PeakLoad NONE = new PeakLoad(Power.ZERO, ApparentPower.ZERO, Power.ZERO, ApparentPower.ZERO);

    /** The peak of some loads, AC and DC mixed: DC loads do not count. */
    public static PeakLoad of(List<Load> loads, CoincidentStarts coincident) {
        List<Load> ac =
                loads.stream().filter(load -> load.supply() == Supply.AC).toList();
        PeakLoad most = NONE;
        // hours of different months in which the same loads may run are alike
        for (List<Load> atOnce : sets(ac)) {
            most = most.or(together(atOnce, coincident));
        }
        return most;
    }

    /**
     * The peak of the largest single load, largest in each figure by itself, AC and DC mixed: what one line of a service with
     * several lines carries alone, however the others are balanced. Several of one kind count as one of them.
     */
    public static PeakLoad ofLargest(List<Load> loads) {
        PeakLoad largest = NONE;
        for (Load load : loads) {
            Load one =
                    LoadBuilder.builder(load).count(Math.min(1, load.count())).build();
            largest = largest.or(of(List.of(one), CoincidentStarts.ALL));
        }
        return largest;
    }

    /** The sets of loads that may run in the same hour of some month. */
    private static Set<List<Load>> sets(List<Load> loads) {
        List<boolean[]> hours = loads.stream().map(PeakLoad::hoursOn).toList();
        Set<List<Load>> sets = new LinkedHashSet<>();
        for (Month month : Month.values()) {
            for (int hour = 0; hour < 24; hour++) {
                List<Load> atOnce = new ArrayList<>();
                for (int i = 0; i < loads.size(); i++) {
                    if (hours.get(i)[hour] && loads.get(i).usedIn(month)) {
                        atOnce.add(loads.get(i));
                    }
                }
                sets.add(atOnce);
            }
        }
        return sets;
    }

    private static boolean[] hoursOn(Load load) {
        boolean[] on = new boolean[24];
        for (int hour = 0; hour < 24; hour++) {
            on[hour] = load.onShare(hour) > 0;
        }
        return on;
    }

    private PeakLoad or(PeakLoad other) {
        return new PeakLoad(
                larger(running, other.running),
                larger(runningApparent, other.runningApparent),
                larger(surge, other.surge),
                larger(surgeApparent, other.surgeApparent));
    }

    private static <T extends Comparable<T>> T larger(T a, T b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static PeakLoad together(List<Load> loads, CoincidentStarts coincident) {
        double watts = 0;
        double vars = 0;
        for (Load load : loads) {
            watts += load.runningPower().watts();
            vars += reactive(
                    load.runningApparent().voltAmperes(), load.powerFactor().fraction());
        }
        double startWatts = watts;
        double startVars = vars;
        List<Start> alone = new ArrayList<>();
        for (Load load : loads) {
            if (joins(load, coincident)) {
                Start start = Start.of(load, load.count());
                startWatts += start.extraWatts();
                startVars += start.extraVars();
            } else {
                alone.add(Start.of(load, Math.min(1, load.count())));
            }
        }
        double mostWatts = startWatts;
        double mostVoltAmperes = Math.hypot(startWatts, startVars);
        for (Start start : alone) {
            // the start that asks the most watts need not be the one that asks the most volt-amperes
            mostWatts = Math.max(mostWatts, startWatts + start.extraWatts());
            mostVoltAmperes = Math.max(
                    mostVoltAmperes, Math.hypot(startWatts + start.extraWatts(), startVars + start.extraVars()));
        }
        return new PeakLoad(
                Power.watts(watts),
                ApparentPower.voltAmperes(Math.hypot(watts, vars)),
                Power.watts(mostWatts),
                ApparentPower.voltAmperes(mostVoltAmperes));
    }

    /** Whether it may start together with others; what does not counts if its start alone is the hardest. */
    private static boolean joins(Load load, CoincidentStarts coincident) {
        return switch (coincident) {
            case ALL -> true;
            case SELF_SWITCHING -> load.selfSwitching();
            case LARGEST -> false;
        };
    }

    private static double reactive(double voltAmperes, double powerFactor) {
        return voltAmperes * Math.sqrt(1 - powerFactor * powerFactor);
    }

    /** What a start draws on top of running. */
    private record Start(double extraWatts, double extraVars) {
        /** The starting multiple applies to the running volt-amperes; a start has a power factor of its own. */
        static Start of(Load load, int units) {
            double multiple = load.startingMultiple().fraction();
            if (multiple <= 1) {
                return new Start(0, 0);
            }
            double runningVa = load.power().atPowerFactor(load.powerFactor()).voltAmperes() * units;
            double startVa = multiple * runningVa;
            double runningWatts = load.power().watts() * units;
            double startPowerFactor = load.startPowerFactor().fraction();
            return new Start(
                    Math.max(0, startVa * startPowerFactor - runningWatts),
                    Math.max(
                            0,
                            reactive(startVa, startPowerFactor)
                                    - reactive(runningVa, load.powerFactor().fraction())));
        }
    }
}
