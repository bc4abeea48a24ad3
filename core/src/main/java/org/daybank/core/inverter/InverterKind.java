package org.daybank.core.inverter;

/** The families of inverters that stand on a bank. */
public enum InverterKind {
    /** Makes AC from the bank, and nothing else. */
    STAND_ALONE,
    /** Also takes AC from the shore or a generator, passes it on and charges from it. */
    INVERTER_CHARGER
}
