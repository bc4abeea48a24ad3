package org.daybank.core.quantity;

import java.util.List;

/** Units of temperature difference, by UCUM code. */
public enum TemperatureDifferenceUnit implements Unit {
    /** K; UCUM K. */
    KELVIN("K", "K", Scale.of("1", "1"), "Cel", "°C", "℃", "degC");

    private final UnitDefinition definition;

    TemperatureDifferenceUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
