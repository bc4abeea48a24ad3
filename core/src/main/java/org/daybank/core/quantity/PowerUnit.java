package org.daybank.core.quantity;

import java.util.List;

/** Units of power, by UCUM code. */
public enum PowerUnit implements Unit {
    /** W; UCUM W. */
    WATT("W", "W", Scale.of("1", "1"), "watt", "watts"),
    /** mW; UCUM mW. */
    MILLIWATT("mW", "mW", Scale.of("1", "1000")),
    /** kW; UCUM kW. */
    KILOWATT("kW", "kW", Scale.of("1000", "1"), "kilowatt", "kilowatts"),
    /** MW; UCUM MW. */
    MEGAWATT("MW", "MW", Scale.of("1000000", "1"));

    private final UnitDefinition definition;

    PowerUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
