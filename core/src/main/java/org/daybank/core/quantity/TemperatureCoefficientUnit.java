package org.daybank.core.quantity;

import java.util.List;

/** Units of temperature coefficient, by UCUM code. */
public enum TemperatureCoefficientUnit implements Unit {
    /** 1/K; UCUM 1/K. */
    PER_KELVIN("1/K", "1/K", Scale.of("1", "1"), "/K", "K-1", "1/Cel", "/Cel"),
    /** %/K; UCUM %/K. */
    PERCENT_PER_KELVIN("%/K", "%/K", Scale.of("1", "100"), "%/Cel", "%/°C", "%/℃", "%/degC");

    private final UnitDefinition definition;

    TemperatureCoefficientUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
