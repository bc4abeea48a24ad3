package org.daybank.core.design;

import java.util.List;
import java.util.function.Function;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;

/**
 * A design whose array feeds the grid without a bank.
 *
 * @param brief every default resolved
 * @param system the selected parts
 * @param energy use and yield
 * @param evidence what checks and simulation show
 * @param alternatives other designs and their prices
 * @param rejected every other product, with the rules it fails
 */
public record GridDesign(
        @NotRepeated DesignBrief brief,
        GridSystem system,
        GridEnergy energy,
        GridEvidence evidence,
        GridAlternatives alternatives,
        GridSelections rejected)
        implements DesignOutcome {
    @Override
    public MonthlySun sun() {
        return energy.sun();
    }

    @Override
    public EnergyBudget budget() {
        return energy.budget();
    }

    @Override
    public List<Check> checks() {
        return evidence.checks();
    }

    @Override
    public List<Hazard> hazards() {
        return Hazards.of(brief, system);
    }

    @Override
    public Working working() {
        return Working.builder()
                .all(energy.budget().working())
                .all(rejected.inverters().working())
                .all(system.wiring().working())
                .build();
    }

    @Override
    public <T> T fold(
            Function<? super StandAloneDesign, ? extends T> standAlone,
            Function<? super BackupDesign, ? extends T> backup,
            Function<? super GridDesign, ? extends T> grid,
            Function<? super NoDesign, ? extends T> none) {
        return grid.apply(this);
    }
}
