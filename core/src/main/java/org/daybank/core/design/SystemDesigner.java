package org.daybank.core.design;

import org.daybank.core.catalog.Catalog;

/** Designs a system for a brief from the products of a catalogue. Deterministic; safe for any number of threads. */
public final class SystemDesigner {
    private SystemDesigner() {}

    /**
     * Returns the cheapest complete design that passes every rule. On a bank: at the lowest system nominal voltage that has
     * one, with the cheapest of other voltages and chemistries as alternatives. Backing up the grid: the same for the essential
     * loads, compared with the whole house. Without a bank: modules and the inverters that feed the grid.
     *
     * @return a design or, where the catalogue has no products for one, a {@link NoDesign} with the reasons
     * @throws org.daybank.core.schema.InvalidInput when a month of the site gets more sun than there is at its latitude
     */
    public static DesignOutcome design(DesignBrief brief, Catalog catalog) {
        return switch (brief.kind()) {
            case STAND_ALONE, MOBILE -> BankDesigner.design(brief, catalog);
            case GRID_BACKUP -> BackupDesigner.design(brief, catalog);
            case GRID_INTERACTIVE -> new GridDesigner(brief, catalog).design();
        };
    }
}
