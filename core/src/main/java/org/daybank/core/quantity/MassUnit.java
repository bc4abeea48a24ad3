package org.daybank.core.quantity;

import java.util.List;

/** Units of mass, by UCUM code. */
public enum MassUnit implements Unit {
    /** kg; UCUM kg. */
    KILOGRAM("kg", "kg", Scale.of("1", "1")),
    /** g; UCUM g. */
    GRAM("g", "g", Scale.of("1", "1000")),
    /** t; UCUM t. */
    TONNE("t", "t", Scale.of("1000", "1")),
    /** lb; UCUM [lb_av]. */
    POUND("[lb_av]", "lb", Scale.of("0.45359237", "1"));

    private final UnitDefinition definition;

    MassUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
