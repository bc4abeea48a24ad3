package org.daybank.core.simulation;

/** What an array brings in each hour of a year, in W; its arrays are read in place by the loop over the hours. */
final class ArrayHours {
    /** At the bank while it is empty. */
    final double[] whenEmpty;

    /** At the bank while it is full; the same array where a controller tracks the best point. */
    final double[] whenFull;

    /** Lost within the controllers. */
    final double[] converted;

    /** Over what the controllers give. */
    final double[] clipped;

    private final boolean tracked;

    ArrayHours(int hours, boolean tracked) {
        this.tracked = tracked;
        whenEmpty = new double[hours];
        whenFull = tracked ? whenEmpty : new double[hours];
        converted = new double[hours];
        clipped = new double[hours];
    }

    /** Adds what a tracking controller takes of the strings on it. */
    void track(int hour, double bestWatts, double efficiency, double mostWatts) {
        double given = Math.min(bestWatts * efficiency, mostWatts);
        whenEmpty[hour] += given;
        converted[hour] += bestWatts * (1 - efficiency);
        clipped[hour] += bestWatts * efficiency - given;
    }

    /** Adds what a controller lets through of the strings on it. */
    void pass(int hour, double emptyWatts, double fullWatts) {
        whenEmpty[hour] += emptyWatts;
        whenFull[hour] += fullWatts;
    }

    /** What reaches the bank in an hour at a state of charge: its voltage goes in a straight line from empty to full. */
    double atBank(int hour, double stateOfCharge) {
        return tracked
                ? whenEmpty[hour]
                : whenEmpty[hour] + Math.max(0, Math.min(1, stateOfCharge)) * (whenFull[hour] - whenEmpty[hour]);
    }
}
