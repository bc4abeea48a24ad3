package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.function.Function;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;

/**
 * A design that runs on sun and bank: stationary or, with shore power and an alternator besides, mobile.
 *
 * @param brief every default resolved
 * @param system the selected parts
 * @param energy need and yield
 * @param evidence what checks and simulation show
 * @param alternatives other designs and their prices
 * @param rejected every other product and voltage, with the rules it fails
 */
@RecordBuilder
public record StandAloneDesign(
        @NotRepeated DesignBrief brief,
        BatterySystem system,
        EnergyBalance energy,
        DesignEvidence evidence,
        DesignAlternatives alternatives,
        ProductSelections rejected)
        implements DesignOutcome, StandAloneDesignBuilder.With {
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
        return DesignWorking.of(system, energy, evidence);
    }

    @Override
    public <T> T fold(
            Function<? super StandAloneDesign, ? extends T> standAlone,
            Function<? super BackupDesign, ? extends T> backup,
            Function<? super GridDesign, ? extends T> grid,
            Function<? super NoDesign, ? extends T> none) {
        return standAlone.apply(this);
    }
}
