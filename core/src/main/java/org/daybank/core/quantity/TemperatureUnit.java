package org.daybank.core.quantity;

import java.util.List;

/** Units of temperature, by UCUM code. */
public enum TemperatureUnit implements Unit {
    /** °C; UCUM Cel. */
    CELSIUS("Cel", "°C", Scale.of("1", "1"), "C", "degC", "℃"),
    /** K; UCUM K. */
    KELVIN("K", "K", Scale.shifted("-273.15", "1", "1")),
    /** °F; UCUM [degF]. */
    FAHRENHEIT("[degF]", "°F", Scale.shifted("-32", "5", "9"), "degF", "F");

    private final UnitDefinition definition;

    TemperatureUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
