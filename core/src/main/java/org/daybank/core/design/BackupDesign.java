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
 * A design on the grid whose bank supplies the panel of the essential loads during an outage.
 *
 * @param brief every default resolved
 * @param essentialPanel the panel of the essential loads, compared with a backup of every load
 * @param system the selected parts
 * @param energy need of the essential loads, and yield
 * @param evidence what checks show; the hours are not simulated, since the length of outages is unknown
 * @param alternatives other designs and their prices
 * @param rejected every other product and voltage, with the rules it fails
 */
public record BackupDesign(
        @NotRepeated DesignBrief brief,
        EssentialPanel essentialPanel,
        BatterySystem system,
        EnergyBalance energy,
        DesignEvidence evidence,
        DesignAlternatives alternatives,
        ProductSelections rejected)
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
        return DesignWorking.of(system, energy, evidence);
    }

    @Override
    public <T> T fold(
            Function<? super StandAloneDesign, ? extends T> standAlone,
            Function<? super BackupDesign, ? extends T> backup,
            Function<? super GridDesign, ? extends T> grid,
            Function<? super NoDesign, ? extends T> none) {
        return backup.apply(this);
    }
}
