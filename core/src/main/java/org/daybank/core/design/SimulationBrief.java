package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Angle;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.simulation.KineticWells;
import org.jspecify.annotations.Nullable;

/**
 * A system that someone chose, to be run through the hours of one or many years.
 *
 * @param brief where it stands, what must run, and every assumption
 * @param parts what it is made of
 * @param engine start and stop of a generator; absent when there is none
 * @param wells how the bank seems empty when drawn hard; absent, it gives all it holds at any rate
 */
@RecordBuilder
public record SimulationBrief(
        DesignBrief brief,
        SystemParts parts,
        @Nullable EngineRule engine,
        @Nullable KineticWells wells) implements SimulationBriefBuilder.With {
    /**
     * Validates the two together.
     *
     * @throws org.daybank.core.schema.InvalidInput when the brief or the parts are absent, or state different planes of the
     *     array
     */
    public SimulationBrief {
        Validation validation = new Validation().required("brief", brief).required("parts", parts);
        if (brief != null && parts != null) {
            same(validation, "tilt", parts.tilt(), brief.array().tilt());
            same(validation, "azimuth", parts.azimuth(), brief.array().azimuth());
        }
        validation.done();
    }

    private static void same(Validation validation, String angle, Angle ofParts, @Nullable Angle ofBrief) {
        validation.that(
                ofBrief == null || ofBrief.equals(ofParts),
                "parts/" + angle,
                ProblemCode.INCONSISTENT,
                () -> "parts.%s must equal array.%s %s, but was %s.".formatted(angle, angle, ofBrief, ofParts));
    }
}
