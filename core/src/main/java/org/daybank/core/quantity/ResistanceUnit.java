package org.daybank.core.quantity;

import java.util.List;

/** Units of resistance, by UCUM code. */
public enum ResistanceUnit implements Unit {
    /** Ω; UCUM Ohm. */
    OHM("Ohm", "Ω", Scale.of("1", "1"), "ohm", "ohms", "Ω"),
    /** mΩ; UCUM mOhm. */
    MILLIOHM("mOhm", "mΩ", Scale.of("1", "1000"), "mohm", "mΩ"),
    /** kΩ; UCUM kOhm. */
    KILOOHM("kOhm", "kΩ", Scale.of("1000", "1"), "kohm", "kΩ");

    private final UnitDefinition definition;

    ResistanceUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
