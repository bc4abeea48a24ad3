package org.daybank.core.quantity;

import java.util.List;

/** Units of volume, by UCUM code. */
public enum VolumeUnit implements Unit {
    /** L; UCUM L. */
    LITRE("L", "L", Scale.of("1", "1"), "l"),
    /** mL; UCUM mL. */
    MILLILITRE("mL", "mL", Scale.of("1", "1000"), "ml"),
    /** m³; UCUM m3. */
    CUBIC_METRE("m3", "m³", Scale.of("1000", "1"));

    private final UnitDefinition definition;

    VolumeUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
