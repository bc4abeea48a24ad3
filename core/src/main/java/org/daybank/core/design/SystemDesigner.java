package org.daybank.core.design;

import org.daybank.core.catalog.Catalog;

/** Runs the whole job: a brief and a catalogue in, a complete design out. Deterministic; safe for any number of threads. */
public final class SystemDesigner {
    private SystemDesigner() {}

    /**
     * The cheapest complete design that keeps every rule. On a bank: at the lowest bus voltage that does, with the cheapest of
     * other voltages and chemistries beside it. Backing up the grid: the same for the essential loads, and how much smaller that
     * is than for the whole house. Without a bank: modules and the inverters that feed the grid.
     *
     * @return a design whose {@link SystemDesign#complete()} says whether every part was found; a brief that nothing satisfies
     *     is no error
     * @throws org.daybank.core.schema.InvalidInput when a month of the site gets more sun than there is at its latitude
     */
    public static SystemDesign design(DesignBrief brief, Catalog catalog) {
        SystemDesign design = switch (brief.kind()) {
            case STAND_ALONE, MOBILE -> BankDesigner.design(brief, catalog);
            case GRID_BACKUP -> BackupDesigner.design(brief, catalog);
            case GRID_INTERACTIVE -> new GridDesigner(brief, catalog).design();
        };
        return DesignWiring.wired(design, catalog);
    }
}
