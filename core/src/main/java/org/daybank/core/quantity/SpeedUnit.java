package org.daybank.core.quantity;

import java.util.List;

/** Units of speed, by UCUM code. */
public enum SpeedUnit implements Unit {
    /** m/s; UCUM m/s. */
    METRE_PER_SECOND("m/s", "m/s", Scale.of("1", "1"), "m.s-1"),
    /** km/h; UCUM km/h. */
    KILOMETRE_PER_HOUR("km/h", "km/h", Scale.of("1", "3.6"));

    private final UnitDefinition definition;

    SpeedUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
