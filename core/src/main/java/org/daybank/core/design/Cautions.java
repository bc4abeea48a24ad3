package org.daybank.core.design;

import java.util.List;
import org.daybank.core.working.Caution;

/** What can hurt someone or something in a design; each caution only where its cause is. */
public final class Cautions {
    private Cautions() {}

    static List<Caution> of(SystemDesign design) {
        return List.of();
    }
}
