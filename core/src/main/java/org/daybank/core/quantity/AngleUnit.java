package org.daybank.core.quantity;

import java.util.List;

/** Units of angle, by UCUM code. */
public enum AngleUnit implements Unit {
    /** °; UCUM deg. */
    DEGREE("deg", "°", Scale.of("1", "1"), "degree", "degrees"),
    /** rad; UCUM rad. */
    RADIAN("rad", "rad", Scale.of("57.295779513082320876798154814105170332405", "1"));

    private final UnitDefinition definition;

    AngleUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
