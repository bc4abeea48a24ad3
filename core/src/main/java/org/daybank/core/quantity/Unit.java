package org.daybank.core.quantity;

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
}
