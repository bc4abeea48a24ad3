package org.daybank.core.quantity;

import java.util.List;

/** Units of length, by UCUM code. */
public enum LengthUnit implements Unit {
    /** m; UCUM m. */
    METRE("m", "m", Scale.of("1", "1"), "metre", "metres", "meter", "meters"),
    /** mm; UCUM mm. */
    MILLIMETRE("mm", "mm", Scale.of("1", "1000")),
    /** cm; UCUM cm. */
    CENTIMETRE("cm", "cm", Scale.of("1", "100")),
    /** km; UCUM km. */
    KILOMETRE("km", "km", Scale.of("1000", "1")),
    /** ft; UCUM [ft_i]. */
    FOOT("[ft_i]", "ft", Scale.of("0.3048", "1"), "foot", "feet"),
    /** in; UCUM [in_i]. */
    INCH("[in_i]", "in", Scale.of("0.0254", "1"), "inch", "inches");

    private final UnitDefinition definition;

    LengthUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
