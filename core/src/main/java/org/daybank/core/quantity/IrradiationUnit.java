package org.daybank.core.quantity;

import java.util.List;

/** Units of irradiation, by UCUM code. */
public enum IrradiationUnit implements Unit {
    /** kWh/m²; UCUM kW.h/m2. */
    KILOWATT_HOUR_PER_SQUARE_METRE("kW.h/m2", "kWh/m²", Scale.of("1", "1"), "kW.h.m-2", "kWh/m2", "kW·h/m²"),
    /** Wh/m²; UCUM W.h/m2. */
    WATT_HOUR_PER_SQUARE_METRE("W.h/m2", "Wh/m²", Scale.of("1", "1000"), "Wh/m2"),
    /** MJ/m²; UCUM MJ/m2. */
    MEGAJOULE_PER_SQUARE_METRE("MJ/m2", "MJ/m²", Scale.of("1", "3.6"), "MJ.m-2");

    private final UnitDefinition definition;

    IrradiationUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
