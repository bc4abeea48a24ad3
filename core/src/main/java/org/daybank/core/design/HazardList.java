package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/** Hazards in the order in which they are found. */
final class HazardList {
    private final List<Hazard> hazards = new ArrayList<>();

    /**
     * Adds a hazard.
     *
     * @param subject the part or circuit
     * @param action what to do
     * @param text what can happen, with places for the figures
     * @param figures quantities, shown to three significant digits, and whatever else
     */
    void add(String code, Severity severity, String subject, String action, String text, Object... figures) {
        Object[] shown = new Object[figures.length];
        for (int i = 0; i < figures.length; i++) {
            shown[i] = figures[i] instanceof Quantity quantity ? quantity.rounded(3) : figures[i];
        }
        hazards.add(new Hazard(code, severity, subject, text.formatted(shown), action + " " + Hazard.LOCAL_CODE));
    }

    /** Adds the hazards of a part. */
    void addAll(List<Hazard> found) {
        hazards.addAll(found);
    }

    /** Adds those hazards of which none of the same code and subject is present. */
    void addMissing(List<Hazard> found) {
        for (Hazard hazard : found) {
            if (hazards.stream()
                    .noneMatch(present -> present.code().equals(hazard.code())
                            && present.subject().equals(hazard.subject()))) {
                hazards.add(hazard);
            }
        }
    }

    /** Everything found, in order. */
    List<Hazard> all() {
        return List.copyOf(hazards);
    }
}
