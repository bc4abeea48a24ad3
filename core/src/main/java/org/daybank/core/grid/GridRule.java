package org.daybank.core.grid;

import org.daybank.core.working.Rule;

/** The rules of an array or a bank that feeds a panel on the grid. */
public enum GridRule implements Rule {
    /** Main device and inverter together are within the busbar rating. */
    BUSBAR("NFPA 70 705.12(B)"),
    /** The grid inverters are within the rating of the inverter that forms the grid. */
    COUPLING_POWER("practice for AC-coupled systems"),
    /** The surplus of the array is within what the bank accepts. */
    COUPLING_SURPLUS("practice for AC-coupled systems");

    private final String source;

    GridRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
