package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.working.Check;

/**
 * A system through some years that follow each other.
 *
 * @param reliability what the years say together
 * @param checks what should be so that the figures mean something, kept or not
 * @param byYear each year
 */
public record Simulation(Reliability reliability, List<Check> checks, List<SimulatedYear> byYear) {
    /** Keeps copies. */
    public Simulation {
        checks = List.copyOf(checks);
        byYear = List.copyOf(byYear);
    }
}
