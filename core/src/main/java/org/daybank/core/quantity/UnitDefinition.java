package org.daybank.core.quantity;

import java.util.List;

/**
 * What is known of a unit.
 *
 * @param code its UCUM code, as it crosses the wire
 * @param symbol as people read it
 * @param scale how it relates to the base unit of its dimension
 * @param otherSpellings what people write besides the code and the symbol
 */
public record UnitDefinition(String code, String symbol, Scale scale, List<String> otherSpellings) {
    /** Keeps a copy of the spellings. */
    public UnitDefinition {
        otherSpellings = List.copyOf(otherSpellings);
    }
}
