package org.daybank.core.design;

import org.daybank.core.working.Rule;

/** The rules that concern several parts of a design. */
public enum DesignRule implements Rule {
    /** A number of modules covers every month. */
    ARRAY("IEEE 1562"),
    /** The simulated availability reaches what is required. */
    AVAILABILITY("simulation; IEEE 1562"),
    /** A battery of the catalogue fits. */
    BATTERY("catalogue"),
    /** A charge controller of the catalogue fits array and bank. */
    CHARGE_CONTROLLER("catalogue"),
    /** The battery is of an accepted chemistry. */
    CHEMISTRY("requirement of the customer"),
    /** The charging current is within what a cold bank accepts. */
    COLD_CHARGE_CURRENT("data sheet of the battery"),
    /** The array covers the required share of the loads. */
    COVERAGE("requirement of the customer"),
    /** The product can be delivered in time. */
    DELIVERY("stock and lead time of the shop"),
    /** The highest bus voltage is within what the DC loads accept. */
    HIGHEST_SUPPLY("data sheets of the loads"),
    /** An inverter of the catalogue fits. */
    INVERTER("catalogue"),
    /** The lowest bus voltage still runs the DC loads. */
    LOWEST_SUPPLY("data sheets of the loads"),
    /** The charging current reaches the minimum of the battery. */
    MINIMUM_CHARGE_CURRENT("IEEE 1361; data sheet of the battery"),
    /** The array refills the bank in time. */
    RECOVERY("IEEE 1562"),
    /** The bank carries the autonomy at its end of life. */
    WORN_DEPTH("IEEE 1013");

    private final String source;

    DesignRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
