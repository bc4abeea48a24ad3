package org.daybank.core.inverter;

/** What a customer may ask of an inverter besides AC. */
public enum InverterFunction {
    /** Takes AC from the shore or a generator and passes it on. */
    AC_INPUT,
    /** Charges the bank from its AC input. */
    CHARGER,
    /** Starts an engine generator. */
    GENERATOR_START,
    /** Adds the bank's power to a weak AC input. */
    ASSIST,
    /** Can be switched from afar. */
    REMOTE_PANEL,
    /** Can be watched over a network. */
    NETWORK_MONITORING
}
