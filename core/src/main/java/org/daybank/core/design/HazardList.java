package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.Hazard;

/** Hazards as they are found. */
final class HazardList {
    private final List<Hazard> hazards = new ArrayList<>();

    /** Adds a hazard. */
    void add(Hazard hazard) {
        hazards.add(hazard);
    }

    /** Adds what was found elsewhere. */
    void addAll(List<Hazard> found) {
        hazards.addAll(found);
    }

    /** Returns everything found, in order. */
    List<Hazard> all() {
        return List.copyOf(hazards);
    }
}
