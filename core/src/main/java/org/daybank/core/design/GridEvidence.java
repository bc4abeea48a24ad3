package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.grid.GridBill;
import org.daybank.core.grid.GridFlows;
import org.daybank.core.working.Check;

/**
 * What checks and simulation show of an array that feeds the grid.
 *
 * @param checks rules across parts, which a design need not pass
 * @param flows self-consumption, import and export by the hour; empty when no year is simulated
 * @param bill cost of the flows by the tariff of the brief, and pay-back time; empty without a tariff or flows
 */
public record GridEvidence(List<Check> checks, Optional<GridFlows> flows, Optional<GridBill> bill) {
    /** Keeps a copy. */
    public GridEvidence {
        checks = List.copyOf(checks);
    }
}
