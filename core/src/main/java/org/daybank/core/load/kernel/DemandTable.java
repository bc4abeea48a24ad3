package org.daybank.core.load.kernel;

/**
 * Mean power in W of some loads in each hour of the mean day of each month: {@code [month from 0][hour]}.
 *
 * <p>Not a record: its arrays are read in place by the loops they were made for, and never written again.
 */
public final class DemandTable {
    /** What leaves the bank, conversion and DC wiring included. */
    public final double[][] atBank = new double[12][24];

    /** What the loads themselves get of it. */
    public final double[][] atLoads = new double[12][24];
}
