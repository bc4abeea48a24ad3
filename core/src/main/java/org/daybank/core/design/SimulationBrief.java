package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.simulation.KineticWells;
import org.jspecify.annotations.Nullable;

/**
 * A system that someone chose, to be run through the hours of one or many years.
 *
 * @param brief where it stands, what must run, and every assumption
 * @param parts what it is made of
 * @param engine that stands by; absent when there is none
 * @param wells how the bank seems empty when drawn hard; absent, it gives all it holds at any rate
 */
@RecordBuilder
public record SimulationBrief(
        DesignBrief brief,
        SystemParts parts,
        @Nullable EngineRule engine,
        @Nullable KineticWells wells) implements SimulationBriefBuilder.With {
    /**
     * Refuses what is missing.
     *
     * @throws org.daybank.core.schema.InvalidInput when the brief or the parts are absent
     */
    public SimulationBrief {
        Validation.of(SimulationBrief.class, brief, parts, engine, wells).done();
    }
}
