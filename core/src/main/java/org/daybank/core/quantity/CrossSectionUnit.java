package org.daybank.core.quantity;

import java.util.List;

/** Units of cross-section, by UCUM code. */
public enum CrossSectionUnit implements Unit {
    /** mm²; UCUM mm2. */
    SQUARE_MILLIMETRE("mm2", "mm²", Scale.of("1", "1"), "sqmm"),
    /** cm²; UCUM cm2. */
    SQUARE_CENTIMETRE("cm2", "cm²", Scale.of("100", "1")),
    /** m²; UCUM m2. */
    SQUARE_METRE("m2", "m²", Scale.of("1000000", "1"));

    private final UnitDefinition definition;

    CrossSectionUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
