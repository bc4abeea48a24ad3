package org.daybank.core.simulation;

/** What came of many designs, one place for each; not a record, since it is filled by several threads. */
final class Tallies {
    final double[] lossHours;
    final double[] unserved;
    final double[] spilled;
    final double[] throughput;
    final double[] lowest;

    Tallies(int designs) {
        lossHours = new double[designs];
        unserved = new double[designs];
        spilled = new double[designs];
        throughput = new double[designs];
        lowest = new double[designs];
    }
}
