package org.daybank.core.quantity;

import java.util.List;

/** Units of voltage, by UCUM code. */
public enum VoltageUnit implements Unit {
    /** V; UCUM V. */
    VOLT("V", "V", Scale.of("1", "1"), "volt", "volts"),
    /** mV; UCUM mV. */
    MILLIVOLT("mV", "mV", Scale.of("1", "1000")),
    /** kV; UCUM kV. */
    KILOVOLT("kV", "kV", Scale.of("1000", "1"));

    private final UnitDefinition definition;

    VoltageUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
