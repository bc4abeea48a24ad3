package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.Hazard;

/** Hazards in the order in which they are found. */
final class HazardList {
    private final List<Hazard> hazards = new ArrayList<>();

    /** Adds a hazard. */
    void add(Hazard hazard) {
        hazards.add(hazard);
    }

    /** Adds the hazards of a part. */
    void addAll(List<Hazard> found) {
        hazards.addAll(found);
    }

    /** Adds those hazards of which none of the same code and subject is present. */
    void addMissing(List<Hazard> found) {
        for (Hazard hazard : found) {
            if (hazards.stream()
                    .noneMatch(present ->
                            present.code() == hazard.code() && present.subject().equals(hazard.subject()))) {
                hazards.add(hazard);
            }
        }
    }

    /** Everything found, in order. */
    List<Hazard> all() {
        return List.copyOf(hazards);
    }
}
