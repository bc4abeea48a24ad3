package org.daybank.api.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.daybank.core.schema.Assumption;

/**
 * A record built from an input.
 *
 * @param value the record
 * @param said the members that were given, in the forms of an answer
 * @param assumptions what was left out and what is then assumed, and every policy value whether given or not
 */
public record Bound<R extends Record>(R value, ObjectNode said, List<Assumption> assumptions) {
    /** Keeps a copy. */
    public Bound {
        assumptions = List.copyOf(assumptions);
    }
}
