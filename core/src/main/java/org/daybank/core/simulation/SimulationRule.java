package org.daybank.core.simulation;

import org.daybank.core.working.Rule;

/** The rules that a simulated system is checked against. */
public enum SimulationRule implements Rule {
    /** The capacity at the coldest hour of the year is known. */
    CAPACITY_IN_THE_COLD("data sheet of the battery"),
    /** The generator reaches its stop threshold in time. */
    ENGINE_STOP("simulation of the heaviest month");

    private final String source;

    SimulationRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
