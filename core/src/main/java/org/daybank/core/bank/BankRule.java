package org.daybank.core.bank;

import org.daybank.core.working.Rule;

/** The rules that a battery is checked against as part of a bank. */
public enum BankRule implements Rule {
    /** The capacity at the coldest temperature of the bank is known. */
    CAPACITY_IN_THE_COLD("IEEE 1013, temperature correction; data sheet of the battery"),
    /** The cells are warm enough to be charged. */
    CHARGING_TEMPERATURE("data sheet of the battery"),
    /** The continuous discharge current is within the rating of the bank. */
    DISCHARGE_CURRENT("data sheet of the battery"),
    /** The electrolyte does not freeze at the deepest discharge. */
    FREEZING("freezing point of sulphuric acid by density; IEEE 1013"),
    /** The heaters of the batteries cover the heat loss of the enclosure. */
    HEATER_POWER("heat balance of the enclosure, UA·ΔT"),
    /** The number of parallel lead-acid strings is not larger than advised. */
    LEAD_ACID_STRINGS("practice: more strings charge unevenly"),
    /** The number of parallel strings is within what the data sheet allows. */
    PARALLEL_STRINGS("data sheet of the battery; IEEE 1013"),
    /** A whole number of batteries in series makes the nominal voltage. */
    SERIES_COUNT("data sheet of the battery"),
    /** The current of a motor start is within the peak rating of the bank. */
    SURGE_CURRENT("data sheet of the battery"),
    /** The bus stays above the cut-off of the inverter while a motor starts. */
    SURGE_SAG("voltage drop over bank and cable, I·R");

    private final String source;

    BankRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
