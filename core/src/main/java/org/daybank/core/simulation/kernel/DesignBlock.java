package org.daybank.core.simulation.kernel;

import java.util.Arrays;

/**
 * Designs side by side, taken through the hours together. An object belongs to one thread.
 *
 * <p>What differs from design to design are the number of modules and of banks, neither of them whole. Everything else is in
 * {@link SharedFacts} and {@link SharedYear}.
 */
public final class DesignBlock {
    /**
     * So many that their arrays stay in the nearest cache, and six more than a multiple of eight: then all of them lie alike in
     * the lines of the cache.
     */
    public static final int MOST = 326;

    /** A load that lacks less than this share of what it asks lacks nothing. */
    public static final double ROUNDING = 1e-9;

    private final SharedFacts facts;
    private final double inPerStored;
    private int count;

    private final double[] modules = new double[MOST];
    private final double[] banks = new double[MOST];
    private final double[] level = new double[MOST];
    private final double[] lacking = new double[MOST];
    private final double[] left = new double[MOST];
    private final double[] out = new double[MOST];
    private final double[] in = new double[MOST];
    private final double[] limited = new double[MOST];
    private final double[] byOwn = new double[MOST];
    private final double[] monthSpilled = new double[MOST];
    private double fewestBanks;
    private double mostModules;

    /** Wh that the loads did not get, at their own terminals, in the year. */
    public final double[] unserved = new double[MOST];

    /** Hours in which they did not get all they asked. */
    public final double[] lossHours = new double[MOST];

    /** Wh that nobody had use for. */
    public final double[] spilled = new double[MOST];

    /** Wh that came out of the bank. */
    public final double[] throughput = new double[MOST];

    /** Least that the bank held at the end of any hour, in Wh. */
    public final double[] lowest = new double[MOST];

    /** A block without designs yet. */
    public DesignBlock(SharedFacts facts) {
        this.facts = facts;
        this.inPerStored = 1 / facts.chargeEfficiency();
    }

    /** Takes designs in, from a place in longer lists, with their banks charged to a share. */
    public void load(double[] allModules, double[] allBanks, int from, int count, double charge) {
        this.count = count;
        System.arraycopy(allModules, from, modules, 0, count);
        System.arraycopy(allBanks, from, banks, 0, count);
        fewestBanks = Double.POSITIVE_INFINITY;
        mostModules = 0;
        for (int i = 0; i < count; i++) {
            level[i] = banks[i] * facts.capacityWattHours() * charge;
            fewestBanks = Math.min(fewestBanks, banks[i]);
            mostModules = Math.max(mostModules, modules[i]);
        }
    }

    /** Takes all designs through a year from where they stand, and adds it up from nothing. */
    public void year(SharedYear year) {
        Arrays.fill(unserved, 0);
        Arrays.fill(lossHours, 0);
        Arrays.fill(spilled, 0);
        Arrays.fill(throughput, 0);
        for (int i = 0; i < count; i++) {
            lowest[i] = banks[i] * facts.capacityWattHours();
        }
        int hour = 0;
        for (int end : year.monthEnds) {
            Arrays.fill(monthSpilled, 0);
            for (; hour < end; hour++) {
                hour(year, hour);
            }
            HourLoops.add(count, monthSpilled, spilled);
        }
    }

    private void hour(SharedYear year, int hour) {
        double asked = year.askedWatts[hour];
        if (facts.ownWatts() > 0) {
            carry(year, hour, facts.ownWatts() + asked);
            drawAfterOwn(year, hour, asked);
        } else if (year.dark(hour) && asked <= fewestBanks * facts.dischargeWatts()) {
            inTheDark(year, hour, asked);
            return;
        } else {
            carry(year, hour, asked);
            draw(year, hour, asked);
        }
        charge(year, hour);
    }

    private void carry(SharedYear year, int hour, double asked) {
        HourLoops.carry(count, modules, year.moduleWatts[hour], facts.controllerEfficiency(), asked, lacking, left);
    }

    private void draw(SharedYear year, int hour, double asked) {
        double[] drawn = lacking;
        if (asked > fewestBanks * facts.dischargeWatts()) {
            HourLoops.limit(count, lacking, banks, facts.dischargeWatts(), limited);
            drawn = limited;
        }
        HourLoops.draw(
                count,
                drawn,
                banks,
                facts.leakShare(),
                facts.capacityWattHours(),
                year.floorShare[SharedYear.dayOf(hour)],
                level,
                out);
        HourLoops.serve(
                count,
                lacking,
                out,
                year.perAtBank[hour],
                ROUNDING * asked,
                perAsked(asked),
                throughput,
                unserved,
                lossHours);
    }

    /** The system's own parts have theirs first, and may empty the bank. */
    private void drawAfterOwn(SharedYear year, int hour, double asked) {
        HourLoops.leak(count, facts.leakShare(), level);
        HourLoops.share(count, lacking, asked, limited, byOwn);
        HourLoops.drawOwn(count, banks, facts.dischargeWatts(), level, byOwn);
        HourLoops.room(
                count,
                banks,
                facts.dischargeWatts(),
                facts.capacityWattHours(),
                year.floorShare[SharedYear.dayOf(hour)],
                level,
                byOwn,
                in);
        HourLoops.drawRoom(count, limited, in, out);
        HourLoops.lack(
                count, limited, out, year.perAtBank[hour], ROUNDING * asked, perAsked(asked), unserved, lossHours);
        HourLoops.add(count, byOwn, out);
        HourLoops.add(count, out, throughput);
    }

    private static double perAsked(double asked) {
        return asked > 0 ? 1 / asked : 0;
    }

    private void charge(SharedYear year, int hour) {
        double perBank = year.chargeWatts[SharedYear.dayOf(hour)];
        double[] offered = left;
        if (mostModules * year.moduleWatts[hour] * facts.controllerEfficiency() > fewestBanks * perBank) {
            HourLoops.limit(count, left, banks, perBank, limited);
            offered = limited;
        }
        HourLoops.accept(count, offered, banks, facts.capacityWattHours(), facts.taperShare(), inPerStored, level, in);
        HourLoops.move(count, left, in, out, facts.chargeEfficiency(), level, lowest, monthSpilled);
    }

    /** The same with nothing from the array: nothing is charged, and the bank is emptiest at the end of the night. */
    private void inTheDark(SharedYear year, int hour, double asked) {
        HourLoops.drawInTheDark(
                count,
                asked,
                banks,
                facts.leakShare(),
                facts.capacityWattHours(),
                year.floorShare[SharedYear.dayOf(hour)],
                level,
                out,
                throughput);
        HourLoops.lackInTheDark(
                count, asked, out, year.perAtBank[hour], ROUNDING * asked, perAsked(asked), unserved, lossHours);
        if (hour + 1 == year.hours() || !year.dark(hour + 1)) {
            HourLoops.noteLowest(count, level, lowest);
        }
    }
}
