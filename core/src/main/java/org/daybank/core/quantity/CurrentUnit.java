package org.daybank.core.quantity;

import java.util.List;

/** Units of current, by UCUM code. */
public enum CurrentUnit implements Unit {
    /** A; UCUM A. */
    AMPERE("A", "A", Scale.of("1", "1"), "amp", "amps"),
    /** mA; UCUM mA. */
    MILLIAMPERE("mA", "mA", Scale.of("1", "1000")),
    /** kA; UCUM kA. */
    KILOAMPERE("kA", "kA", Scale.of("1000", "1"));

    private final UnitDefinition definition;

    CurrentUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
