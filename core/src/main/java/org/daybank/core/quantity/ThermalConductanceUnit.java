package org.daybank.core.quantity;

import java.util.List;

/** Units of thermal conductance, by UCUM code. */
public enum ThermalConductanceUnit implements Unit {
    /** W/K; UCUM W/K. */
    WATT_PER_KELVIN("W/K", "W/K", Scale.of("1", "1"), "W/Cel", "W/°C");

    private final UnitDefinition definition;

    ThermalConductanceUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
