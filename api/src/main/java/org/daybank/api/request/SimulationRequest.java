package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.SimulationBrief;
import org.daybank.core.design.SystemParts;
import org.daybank.core.design.SystemSimulator;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.simulation.KineticWells;
import org.daybank.core.simulation.Simulation;
import org.jspecify.annotations.Nullable;

/**
 * What comes of a system, hour by hour through one or many years?
 *
 * @param brief where it stands, what must run, and every assumption
 * @param parts what it is made of
 * @param engine generator that stands by; absent when there is none
 * @param wells how the bank seems empty when drawn hard; absent, it gives all it holds at any rate
 * @param catalog the products on offer; those of the service when absent
 */
public record SimulationRequest(
        @Inline DesignBrief brief,
        SystemParts parts,
        @Nullable EngineRule engine,
        @Nullable KineticWells wells,
        @Nullable Catalog catalog) {
    /** Refuses what is missing or out of range. */
    public SimulationRequest {
        Validation.of(SimulationRequest.class, brief, parts, engine, wells, catalog)
                .done();
    }

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public Simulation answer(Catalog onOffer) {
        return SystemSimulator.run(
                new SimulationBrief(brief, parts, engine, wells), catalog == null ? onOffer : catalog);
    }
}
