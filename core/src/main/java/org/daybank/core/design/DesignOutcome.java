package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.wiring.WiringPlan;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Solvable;
import org.daybank.core.working.Working;

/**
 * The outcome of {@link SystemDesigner}: a complete design of one of three kinds, or the reasons why the catalogue has no
 * products for one.
 *
 * <pre>{@code
 * String total = outcome.fold(
 *         standAlone -> standAlone.system().billOfMaterials().total().toString(),
 *         backup -> backup.system().billOfMaterials().total().toString(),
 *         grid -> grid.system().billOfMaterials().total().toString(),
 *         none -> "no design");
 * }</pre>
 */
public sealed interface DesignOutcome extends Solvable permits StandAloneDesign, BackupDesign, GridDesign, NoDesign {
    /** Returns the brief, every default resolved. */
    DesignBrief brief();

    /** Returns the irradiation on the array, by month. */
    MonthlySun sun();

    /** Returns the energy budget of the loads and, in a design, of the parts that draw power themselves. */
    EnergyBudget budget();

    /** Returns the checks across parts, which a design need not pass; empty without a design. */
    List<Check> checks();

    /** Returns the hazards of the design; empty without a design. */
    List<Hazard> hazards();

    /** Returns the steps of the calculation, in order. */
    Working working();

    /** Returns the result of the function for the kind of this outcome. */
    <T> T fold(
            Function<? super StandAloneDesign, ? extends T> standAlone,
            Function<? super BackupDesign, ? extends T> backup,
            Function<? super GridDesign, ? extends T> grid,
            Function<? super NoDesign, ? extends T> none);

    /** Returns the system on a bank of a stand-alone or backup design; empty otherwise. */
    default Optional<BatterySystem> batterySystem() {
        return fold(
                standAlone -> Optional.of(standAlone.system()),
                backup -> Optional.of(backup.system()),
                grid -> Optional.empty(),
                none -> Optional.empty());
    }

    /** Returns the bill of materials; empty without a design. */
    default Optional<BillOfMaterials> billOfMaterials() {
        return fold(
                standAlone -> Optional.of(standAlone.system().billOfMaterials()),
                backup -> Optional.of(backup.system().billOfMaterials()),
                grid -> Optional.of(grid.system().billOfMaterials()),
                none -> Optional.empty());
    }

    /** Returns the circuits; empty without a design. */
    default Optional<WiringPlan> wiring() {
        return fold(
                standAlone -> Optional.of(standAlone.system().wiring()),
                backup -> Optional.of(backup.system().wiring()),
                grid -> Optional.of(grid.system().wiring()),
                none -> Optional.empty());
    }

    @Override
    default Optional<String> unsolvedReason() {
        return this instanceof NoDesign ? Optional.of(NOTHING_FITS) : Optional.empty();
    }

    @Override
    default String unsolvedStatus() {
        return "noDesign";
    }
}
