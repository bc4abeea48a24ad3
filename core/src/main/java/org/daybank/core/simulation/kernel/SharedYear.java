package org.daybank.core.simulation.kernel;

/**
 * What all designs have in common in each hour of one year.
 *
 * <p>Not a record: its arrays are read in place by the loop over the hours, and never written once it is filled.
 */
public final class SharedYear {
    private static final int HOURS_OF_A_DAY = 24;

    /** What one module brings, before the controller, by hour. */
    public final double[] moduleWatts;

    /** What the loads ask of the bank, by hour. */
    public final double[] askedWatts;

    /** What reaches the loads of a Wh that leaves the bank for them, by hour. */
    public final double[] perAtBank;

    /** Share of its capacity below which a bank is not drawn, by day. */
    public final double[] floorShare;

    /** Most that one bank may be charged with, by day. */
    public final double[] chargeWatts;

    /** First hour after each month. */
    public final int[] monthEnds;

    /** A year of what a module brings, the rest of it still zero. */
    public SharedYear(double[] moduleWatts, int[] monthEnds) {
        this.moduleWatts = moduleWatts.clone();
        this.monthEnds = monthEnds.clone();
        int hours = moduleWatts.length;
        askedWatts = new double[hours];
        perAtBank = new double[hours];
        floorShare = new double[hours / HOURS_OF_A_DAY];
        chargeWatts = new double[hours / HOURS_OF_A_DAY];
    }

    /** How many hours. */
    public int hours() {
        return moduleWatts.length;
    }

    static int dayOf(int hour) {
        return hour / HOURS_OF_A_DAY;
    }

    /** Whether no module brings anything in an hour. */
    boolean dark(int hour) {
        return moduleWatts[hour] <= 0;
    }
}
