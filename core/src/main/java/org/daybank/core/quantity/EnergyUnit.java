package org.daybank.core.quantity;

import java.util.List;

/** Units of energy, by UCUM code. */
public enum EnergyUnit implements Unit {
    /** Wh; UCUM W.h. */
    WATT_HOUR("W.h", "Wh", Scale.of("1", "1"), "W·h", "W*h"),
    /** kWh; UCUM kW.h. */
    KILOWATT_HOUR("kW.h", "kWh", Scale.of("1000", "1"), "kW·h", "kW*h"),
    /** MWh; UCUM MW.h. */
    MEGAWATT_HOUR("MW.h", "MWh", Scale.of("1000000", "1"), "MW·h"),
    /** J; UCUM J. */
    JOULE("J", "J", Scale.of("1", "3600"), "W.s", "Ws"),
    /** kJ; UCUM kJ. */
    KILOJOULE("kJ", "kJ", Scale.of("1000", "3600")),
    /** MJ; UCUM MJ. */
    MEGAJOULE("MJ", "MJ", Scale.of("1000000", "3600"));

    private final UnitDefinition definition;

    EnergyUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
