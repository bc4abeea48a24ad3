package org.daybank.core.quantity;

import java.util.List;

/** Units of voltage coefficient, by UCUM code. */
public enum VoltageCoefficientUnit implements Unit {
    /** V/K; UCUM V/K. */
    VOLT_PER_KELVIN("V/K", "V/K", Scale.of("1", "1"), "V/Cel", "V/°C"),
    /** mV/K; UCUM mV/K. */
    MILLIVOLT_PER_KELVIN("mV/K", "mV/K", Scale.of("1", "1000"), "mV/Cel", "mV/°C", "mV/℃");

    private final UnitDefinition definition;

    VoltageCoefficientUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
