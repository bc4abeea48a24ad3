package org.daybank.core.load;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
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
    private static final int HOURS = 24;

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

    /**
     * The most that the AC loads draw in each hour of the day, over all months: 24 values; AC and DC mixed. Loads without a known
     * time may run at any hour.
     */
    public static List<Power> hourly(List<Load> loads) {
        double[] most = new double[HOURS];
        for (Month month : Month.values()) {
            double[] watts = new double[HOURS];
            for (Load load : loads) {
                if (load.supply() == Supply.AC && load.usedIn(month)) {
                    boolean[] on = hoursOn(load);
                    for (int hour = 0; hour < HOURS; hour++) {
                        watts[hour] += on[hour] ? load.runningPower().watts() : 0;
                    }
                }
            }
            for (int hour = 0; hour < HOURS; hour++) {
                most[hour] = Math.max(most[hour], watts[hour]);
            }
        }
        return Arrays.stream(most).mapToObj(Power::watts).toList();
    }

    /** The sets of loads that may run in the same hour of some month. */
    private static Set<List<Load>> sets(List<Load> loads) {
        List<boolean[]> hours = loads.stream().map(PeakLoad::hoursOn).toList();
        Set<List<Load>> sets = new LinkedHashSet<>();
        for (Month month : Month.values()) {
            for (int hour = 0; hour < HOURS; hour++) {
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
        boolean[] on = new boolean[HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
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
                    load.runningApparent().voltAmperes(),
                    load.resolved().powerFactor().fraction());
        }
        List<Start> joining = new ArrayList<>();
        List<Start> alone = new ArrayList<>();
        for (Load load : loads) {
            if (joins(load, coincident)) {
                joining.add(Start.of(load, load.count()));
            } else {
                // by hand one is switched on at a time
                alone.add(Start.of(load, Math.min(1, load.count())));
            }
        }
        double mostWatts = watts;
        for (Start start : joining) {
            mostWatts += Math.max(0, start.extraWatts());
        }
        double joinedWatts = mostWatts;
        double mostVoltAmperes = mostApparent(watts, vars, joining);
        for (Start start : alone) {
            // the start that asks the most watts need not be the one that asks the most volt-amperes
            mostWatts = Math.max(mostWatts, joinedWatts + start.extraWatts());
            mostVoltAmperes = Math.max(
                    mostVoltAmperes, mostApparent(watts + start.extraWatts(), vars + start.extraVars(), joining));
        }
        return new PeakLoad(
                Power.watts(watts),
                ApparentPower.voltAmperes(Math.hypot(watts, vars)),
                Power.watts(mostWatts),
                ApparentPower.voltAmperes(mostVoltAmperes));
    }

    /**
     * The largest apparent power when any of some starts may coincide. A start of low power factor takes fewer watts than the
     * running load, so that all together need not be the worst. The largest sum of vectors, each of which may be in it or not,
     * holds all that point its way: turning from watts to volt-amperes reactive, each start enters or leaves once.
     */
    private static double mostApparent(double watts, double vars, List<Start> starts) {
        List<Start> turning = new ArrayList<>();
        double p = watts;
        double q = vars;
        for (Start start : starts) {
            if (start.extraWatts() > 0 || (start.extraWatts() == 0 && start.extraVars() > 0)) {
                p += start.extraWatts();
                q += start.extraVars();
            }
            if (start.extraWatts() * start.extraVars() < 0) {
                turning.add(start);
            }
        }
        turning.sort(Comparator.comparingDouble(Start::turn));
        double most = Math.hypot(p, q);
        for (Start start : turning) {
            double sign = start.extraWatts() < 0 ? 1 : -1;
            p += sign * start.extraWatts();
            q += sign * start.extraVars();
            most = Math.max(most, Math.hypot(p, q));
        }
        return most;
    }

    /** Whether it may start together with others; what does not counts if its start alone is the hardest. */
    private static boolean joins(Load load, CoincidentStarts coincident) {
        return switch (coincident) {
            case ALL -> true;
            case SELF_SWITCHING -> load.resolved().selfSwitching();
            case LARGEST -> false;
        };
    }

    private static double reactive(double voltAmperes, double powerFactor) {
        return voltAmperes * Math.sqrt(1 - powerFactor * powerFactor);
    }

    /** What a start draws on top of running; fewer watts where the start's power factor is low. */
    private record Start(double extraWatts, double extraVars) {
        /** The starting multiple applies to the running volt-amperes; a start has a power factor of its own. */
        static Start of(Load load, int units) {
            Load.Resolved resolved = load.resolved();
            double multiple = resolved.startingMultiple().fraction();
            if (multiple <= 1) {
                return new Start(0, 0);
            }
            double runningVa =
                    load.power().atPowerFactor(resolved.powerFactor()).voltAmperes() * units;
            double startVa = multiple * runningVa;
            double runningWatts = load.power().watts() * units;
            double startPowerFactor = load.startPowerFactor().fraction();
            return new Start(
                    startVa * startPowerFactor - runningWatts,
                    reactive(startVa, startPowerFactor)
                            - reactive(runningVa, resolved.powerFactor().fraction()));
        }

        /** How far from watts towards volt-amperes reactive one looks when this start begins or ceases to point one's way. */
        double turn() {
            return Math.atan2(Math.abs(extraWatts), Math.abs(extraVars));
        }
    }
}
