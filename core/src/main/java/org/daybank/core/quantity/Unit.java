package org.daybank.core.quantity;

import java.nio.charset.StandardCharsets;

/** A unit of measure; each dimension has an enum of its own. */
public interface Unit {
    /** What is known of this unit. */
    UnitDefinition definition();

    /** The UCUM code, as it crosses the wire: {@code kW.h}. */
    default String code() {
        return definition().code();
    }

    /** The symbol, as people read it: {@code kWh}. */
    default String symbol() {
        return definition().symbol();
    }

    /** The symbol where it is written in plain letters, else the code: {@code kWh}, but {@code Cel}; for names of columns. */
    default String plainSymbol() {
        return StandardCharsets.US_ASCII.newEncoder().canEncode(symbol()) ? symbol() : code();
    }
}
