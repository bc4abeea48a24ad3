package org.daybank.core.charger;

import org.daybank.core.working.Rule;

/** The rules that a charge controller is checked against with an array and a bank. */
public enum ControllerRule implements Rule {
    /** The charging current is within what the bank accepts. */
    BANK_CHARGE_CURRENT("data sheet of the battery"),
    /** The device supports the nominal voltage of the bank. */
    BUS_VOLTAGE("data sheet of the charge controller"),
    /** The device can be set up for the chemistry. */
    CHEMISTRY("data sheet of the charge controller"),
    /** The energy above the output rating is within the accepted share. */
    CLIPPING("policy of the planner"),
    /** The open-circuit voltage on the coldest morning is within the input limit. */
    COLDEST_OPEN_CIRCUIT_VOLTAGE("IEC 62548-1, maximum array voltage; NFPA 70 690.7"),
    /** The number of controllers on one bank is within what the data sheet allows. */
    CONTROLLERS_IN_PARALLEL("data sheet of the charge controller"),
    /** The diverted current is within the rating. */
    DIVERSION_CURRENT("NFPA 70 690.72, diversion charge control"),
    /** The device has the required function. */
    FUNCTION("requirement of the customer"),
    /** The maximum power voltage on the hottest day still charges the bank. */
    HOTTEST_MAXIMUM_POWER_VOLTAGE("IEC 62509; data sheet of the charge controller"),
    /** The short-circuit current is within the input limit. */
    INPUT_CURRENT("IEC 62548-1, 1.25·Isc; NFPA 70 690.8"),
    /** The array power is within the input limit. */
    INPUT_POWER("data sheet of the charge controller"),
    /** The DC loads are within the load output. */
    LOAD_OUTPUT_CURRENT("data sheet of the charge controller"),
    /** The open-circuit voltage of a string starts the device. */
    LOWEST_INPUT_VOLTAGE("data sheet of the charge controller"),
    /** Exactly the stated number of modules can be connected in whole strings. */
    MODULE_COUNT("data sheets of the charge controller and the module; whole strings"),
    /** The modules in series are of the voltage group of the bank. */
    MODULE_GROUP("practice for controllers without maximum power point tracking"),
    /** The array voltage of a step-up controller stays below the bank voltage. */
    OPEN_CIRCUIT_BELOW_BANK("data sheet of the charge controller"),
    /** The open-circuit voltage on the coldest morning is within the system voltage of the modules. */
    SYSTEM_VOLTAGE("IEC 61730-1; IEC 62548-1");

    private final String source;

    ControllerRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
