package org.daybank.core.inverter;

import org.daybank.core.working.Rule;

/** The rules that an inverter on a bank is checked against. */
public enum InverterRule implements Rule {
    /** The charging current is within what the bank accepts. */
    BANK_CHARGE_CURRENT("data sheet of the battery"),
    /** The current from the bank is within the limit of the planner. */
    BANK_CURRENT("policy of the planner"),
    /** The built-in charger gives the required current. */
    CHARGING_CURRENT("data sheet of the inverter"),
    /** The running apparent power is within the continuous rating. */
    CONTINUOUS_APPARENT_POWER("data sheet of the inverter; policy margin"),
    /** The running power is within the continuous rating. */
    CONTINUOUS_POWER("data sheet of the inverter; policy margin"),
    /** The frequency is that of the service. */
    FREQUENCY("IEC 60038"),
    /** The inverter has the required function. */
    FUNCTION("requirement of the customer"),
    /** The highest bank voltage is within the input limit. */
    HIGHEST_BANK_VOLTAGE("data sheet of the inverter"),
    /** The inverter is made for the nominal voltage of the bank. */
    NOMINAL_VOLTAGE("data sheet of the inverter"),
    /** The output voltage is that of the service. */
    OUTPUT_VOLTAGE("IEC 60038"),
    /** The units give the phases of the service. */
    PHASES("IEC 60038"),
    /** AC source and inverter together cover the peak. */
    SOURCE_PEAK("data sheet of the inverter"),
    /** The starting apparent power is within the surge rating. */
    SURGE("data sheet of the inverter"),
    /** The loads are within the transfer current of the AC input. */
    TRANSFER_CURRENT("data sheet of the inverter"),
    /** The transfer time is within what the loads accept. */
    TRANSFER_TIME("data sheet of the inverter"),
    /** The loads accept the waveform. */
    WAVEFORM("practice");

    private final String source;

    InverterRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
