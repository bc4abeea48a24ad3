package org.daybank.core.charger;

/** What a customer may ask of a controller besides charging. */
public enum ControllerFunction {
    /** Shows voltages and currents on itself. */
    DISPLAY,
    /** Shows them elsewhere. */
    REMOTE_DISPLAY,
    /** Can be watched over a network. */
    NETWORK_MONITORING,
    /** Measures the temperature of the bank and compensates for it. */
    TEMPERATURE_SENSOR,
    /** Switches loads off at low voltage. */
    LOAD_OUTPUT,
    /** Sends what the bank cannot take to a diversion load. */
    DIVERSION_CONTROL,
    /** Switches lamps at dusk and dawn. */
    LIGHTING_CONTROL,
    /** Starts an engine generator. */
    GENERATOR_START
}
