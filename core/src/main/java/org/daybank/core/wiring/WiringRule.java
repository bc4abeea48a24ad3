package org.daybank.core.wiring;

import org.daybank.core.working.Rule;

/** The rules that conductor and overcurrent device of a circuit are checked against. */
public enum WiringRule implements Rule {
    /** The conductor carries the current after correction for ambient and grouping. */
    CORRECTED_AMPACITY("NFPA 70 310.15; IEC 60364-5-52"),
    /** The overcurrent device protects the conductor. */
    DEVICE_PROTECTS_CONDUCTOR("IEC 60364-4-43; NFPA 70 240.4"),
    /** The overcurrent device is not larger than the connected equipment allows. */
    LARGEST_DEVICE("data sheet of the equipment"),
    /** The string fuse is within the maximum series fuse rating of the modules. */
    MODULE_SERIES_FUSE("IEC 62548-1; NFPA 70 690.9"),
    /** A standard overcurrent device of the rating exists. */
    STANDARD_DEVICE("IEC 60269; NFPA 70 240.6"),
    /** The conductor carries the current at its terminals. */
    TERMINAL_AMPACITY("NFPA 70 110.14(C); IEC 60364-5-52"),
    /** The voltage drop is within the limit. */
    VOLTAGE_DROP("policy of the planner; IEC 60364-5-52, annex G");

    private final String source;

    WiringRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
