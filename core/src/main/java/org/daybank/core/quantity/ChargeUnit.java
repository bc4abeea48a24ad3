package org.daybank.core.quantity;

import java.util.List;

/** Units of charge, by UCUM code. */
public enum ChargeUnit implements Unit {
    /** Ah; UCUM A.h. */
    AMPERE_HOUR("A.h", "Ah", Scale.of("1", "1"), "A·h", "A*h"),
    /** mAh; UCUM mA.h. */
    MILLIAMPERE_HOUR("mA.h", "mAh", Scale.of("1", "1000"), "mA·h"),
    /** kAh; UCUM kA.h. */
    KILOAMPERE_HOUR("kA.h", "kAh", Scale.of("1000", "1"), "kA·h");

    private final UnitDefinition definition;

    ChargeUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
