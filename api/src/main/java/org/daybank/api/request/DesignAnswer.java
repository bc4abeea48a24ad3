package org.daybank.api.request;

import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.design.BackupDesign;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.GridDesign;
import org.daybank.core.design.NoDesign;
import org.daybank.core.design.StandAloneDesign;
import org.daybank.core.working.Solvable;

/**
 * An outcome as it is written: its kind, and one member of that name.
 *
 * @param kind name of the member that is present
 * @param standAlone a system on sun and bank
 * @param backup a system on the grid with a bank for outages
 * @param grid an array that feeds the grid
 * @param noDesign the reasons why there is no design
 */
public record DesignAnswer(
        Kind kind,
        Optional<StandAloneDesign> standAlone,
        Optional<BackupDesign> backup,
        Optional<GridDesign> grid,
        Optional<NoDesign> noDesign)
        implements Solvable {
    /** The members, one of which is present. */
    public enum Kind {
        /** A system on sun and bank. */
        STAND_ALONE,
        /** A system on the grid with a bank for outages. */
        BACKUP,
        /** An array that feeds the grid. */
        GRID,
        /** The reasons why there is no design. */
        NO_DESIGN
    }

    static DesignAnswer of(DesignOutcome outcome) {
        return new DesignAnswer(
                outcome.<Kind>fold(
                        standAlone -> Kind.STAND_ALONE,
                        backup -> Kind.BACKUP,
                        grid -> Kind.GRID,
                        none -> Kind.NO_DESIGN),
                as(StandAloneDesign.class, outcome),
                as(BackupDesign.class, outcome),
                as(GridDesign.class, outcome),
                as(NoDesign.class, outcome));
    }

    private static <T> Optional<T> as(Class<T> kind, DesignOutcome outcome) {
        return kind.isInstance(outcome) ? Optional.of(kind.cast(outcome)) : Optional.empty();
    }

    /** Returns the member that is present. */
    public DesignOutcome outcome() {
        return Stream.of(standAlone, backup, grid, noDesign)
                .flatMap(Optional::stream)
                .map(DesignOutcome.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Override
    public Optional<String> unsolvedReason() {
        return noDesign.map(none -> NOTHING_FITS);
    }

    @Override
    public String unsolvedStatus() {
        return "noDesign";
    }
}
