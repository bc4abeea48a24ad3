package org.daybank.core.quantity;

import java.util.List;

/** Units of apparent power, by UCUM code. */
public enum ApparentPowerUnit implements Unit {
    /** VA; UCUM V.A. */
    VOLT_AMPERE("V.A", "VA", Scale.of("1", "1"), "V·A"),
    /** kVA; UCUM kV.A. */
    KILOVOLT_AMPERE("kV.A", "kVA", Scale.of("1000", "1"), "kV·A");

    private final UnitDefinition definition;

    ApparentPowerUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
