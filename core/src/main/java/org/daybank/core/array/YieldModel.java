package org.daybank.core.array;

/** How a module's yield is reckoned. */
public enum YieldModel {
    /** The module's circuit at every irradiance and cell temperature: weak light and the bank's voltage count. */
    SINGLE_DIODE,
    /** Power in proportion to irradiance, and current whatever the voltage: what one reckons by hand. */
    PROPORTIONAL
}
