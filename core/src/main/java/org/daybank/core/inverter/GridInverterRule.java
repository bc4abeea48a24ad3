package org.daybank.core.inverter;

import org.daybank.core.working.Rule;

/** The rules that string inverters and microinverters are checked against. */
public enum GridInverterRule implements Rule {
    /** The units of a branch are within its overcurrent device. */
    BRANCH_CURRENT("NFPA 70 690.8; IEC 60364-4-43"),
    /** The energy above the output rating is within the accepted share. */
    CLIPPING("policy of the planner"),
    /** The maximum power voltage on the coldest day is within the tracking window. */
    COLDEST_MAXIMUM_POWER_VOLTAGE("data sheet of the inverter"),
    /** The open-circuit voltage on the coldest morning is within the input limit. */
    COLDEST_OPEN_CIRCUIT_VOLTAGE("IEC 62548-1, maximum array voltage; NFPA 70 690.7"),
    /** The ratio of array power to inverter power is within the accepted range. */
    DC_AC_RATIO("policy of the planner"),
    /** The frequency is that of the service. */
    FREQUENCY("IEC 60038"),
    /** The maximum power voltage on the hottest day is within the tracking window. */
    HOTTEST_MAXIMUM_POWER_VOLTAGE("data sheet of the inverter"),
    /** The operating current is within the input limit. */
    INPUT_CURRENT("data sheet of the inverter"),
    /** The array power is within the input limit. */
    MAXIMUM_ARRAY_POWER("data sheet of the inverter"),
    /** The module power is within what a microinverter accepts. */
    MODULE_POWER("data sheet of the inverter"),
    /** The output voltage is that of the service. */
    OUTPUT_VOLTAGE("IEC 60038"),
    /** The units give the phases of the service. */
    PHASES("IEC 60038"),
    /** The imbalance between phases is within the limit. */
    PHASE_IMBALANCE("practice of grid operators"),
    /** The short-circuit current is within the input limit. */
    SHORT_CIRCUIT_CURRENT("IEC 62548-1, 1.25·Isc; NFPA 70 690.8"),
    /** The open-circuit voltage on the coldest morning is within the system voltage of the modules. */
    SYSTEM_VOLTAGE("IEC 61730-1; IEC 62548-1"),
    /** The trackers take the strings. */
    TRACKERS("data sheet of the inverter");

    private final String source;

    GridInverterRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
