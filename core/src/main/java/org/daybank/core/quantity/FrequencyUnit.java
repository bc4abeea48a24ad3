package org.daybank.core.quantity;

import java.util.List;

/** Units of frequency, by UCUM code. */
public enum FrequencyUnit implements Unit {
    /** Hz; UCUM Hz. */
    HERTZ("Hz", "Hz", Scale.of("1", "1"), "hertz");

    private final UnitDefinition definition;

    FrequencyUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
