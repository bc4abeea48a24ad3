package org.daybank.core.quantity;

import java.util.List;

/** Units of volume flow, by UCUM code. */
public enum VolumeFlowUnit implements Unit {
    /** m³/h; UCUM m3/h. */
    CUBIC_METRE_PER_HOUR("m3/h", "m³/h", Scale.of("1", "1"), "m3.h-1"),
    /** L/s; UCUM L/s. */
    LITRE_PER_SECOND("L/s", "L/s", Scale.of("3.6", "1"), "l/s"),
    /** L/h; UCUM L/h. */
    LITRE_PER_HOUR("L/h", "L/h", Scale.of("1", "1000"), "l/h");

    private final UnitDefinition definition;

    VolumeFlowUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
