package org.daybank.core.quantity;

import java.util.List;

/** Units of irradiance, by UCUM code. */
public enum IrradianceUnit implements Unit {
    /** W/m²; UCUM W/m2. */
    WATT_PER_SQUARE_METRE("W/m2", "W/m²", Scale.of("1", "1"), "W.m-2"),
    /** kW/m²; UCUM kW/m2. */
    KILOWATT_PER_SQUARE_METRE("kW/m2", "kW/m²", Scale.of("1000", "1"), "kW.m-2");

    private final UnitDefinition definition;

    IrradianceUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
