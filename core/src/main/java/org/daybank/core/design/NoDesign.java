package org.daybank.core.design;

import java.util.List;
import java.util.function.Function;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;

/**
 * No products of the catalogue make a system for the brief.
 *
 * @param brief every default resolved
 * @param failedChecks the kinds of product that the catalogue lacks or the rules that the nearest product fails, at least one
 * @param energy what is known of need and irradiation
 * @param rejected every product and voltage evaluated, with the rules it fails
 */
public record NoDesign(
        @NotRepeated DesignBrief brief, List<Check> failedChecks, RequiredEnergy energy, EvaluatedProducts rejected)
        implements DesignOutcome {
    /** Keeps a copy. */
    public NoDesign {
        failedChecks = List.copyOf(failedChecks);
    }

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
        return List.of();
    }

    @Override
    public List<Hazard> hazards() {
        return List.of();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.builder().all(energy.budget().working());
        rejected.gridInverters().map(GridInverterSelection::working).ifPresent(working::all);
        return working.build();
    }

    @Override
    public <T> T fold(
            Function<? super StandAloneDesign, ? extends T> standAlone,
            Function<? super BackupDesign, ? extends T> backup,
            Function<? super GridDesign, ? extends T> grid,
            Function<? super NoDesign, ? extends T> none) {
        return none.apply(this);
    }
}
