package org.daybank.api.wire;

import java.util.List;
import org.daybank.core.schema.Assumption;

/**
 * A record built from an input.
 *
 * @param value the record, every default filled in
 * @param assumptions what was left out and what is then taken, and every policy value whether given or not
 */
public record Bound<R extends Record>(R value, List<Assumption> assumptions) {
    /** Keeps a copy. */
    public Bound {
        assumptions = List.copyOf(assumptions);
    }
}
