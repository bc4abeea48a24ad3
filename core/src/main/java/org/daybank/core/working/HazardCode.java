package org.daybank.core.working;

import org.daybank.core.schema.Scalars;

/**
 * The hazards of designs. The sentences of each are templates in the message resource, under {@code hazard.{code}.text} and
 * {@code hazard.{code}.action}.
 */
public enum HazardCode {
    /** Vented cells hold acid. */
    ACID(Severity.CAUTION, "IEC 62485-2"),
    /** An alternator without a current limit can burn. */
    ALTERNATOR_LIMIT(Severity.WARNING, "practice; data sheet of the alternator"),
    /** Aluminium heats terminals that are made for copper. */
    ALUMINIUM_TERMINALS(Severity.WARNING, "NFPA 70 110.14; IEC 60364-5-52"),
    /** Earth faults and arcs in the array. */
    ARRAY_FAULTS(Severity.DANGER, "IEC 62548-1; NFPA 70 690.11, 690.41"),
    /** A service fed from two sides. */
    BACKFEED(Severity.DANGER, "IEC 62116; IEEE 1547"),
    /** A panel that stays live without the grid. */
    BACKUP_PANEL(Severity.DANGER, "IEC 60364-5-55; NFPA 70 702"),
    /** Arcs and burns at the terminals of a bank. */
    BANK_ARC(Severity.DANGER, "IEC 62485-2"),
    /** The bank is in a room where people are. */
    BANK_INDOORS(Severity.NOTICE, "IEC 62485-2"),
    /** The short-circuit current of the bank. */
    BANK_SHORT_CIRCUIT(Severity.DANGER, "IEC 62485-2; NFPA 70 706"),
    /** Lithium cells without a battery management system, or one that disconnects. */
    BATTERY_MANAGEMENT(Severity.WARNING, "IEC 62619"),
    /** A bus above the voltage that is safe to touch. */
    BUS_VOLTAGE(Severity.DANGER, "IEC 60364-4-41"),
    /** Main device and inverter overload the busbar. */
    BUSBAR_OVERLOAD(Severity.DANGER, "NFPA 70 705.12(B)"),
    /** The inverter must feed the busbar at the end opposite the main device. */
    BUSBAR_POSITION(Severity.WARNING, "NFPA 70 705.12(B)"),
    /** Charging below the lowest temperature damages lithium cells. */
    CHARGING_IN_THE_COLD(Severity.NOTICE, "IEC 62619; data sheet of the battery"),
    /** No conductor and device keep every rule. */
    CIRCUIT_DOES_NOT_FIT(Severity.DANGER, "IEC 60364-4-43; NFPA 70 240"),
    /** A closed cupboard collects hydrogen. */
    CLOSED_CUPBOARD(Severity.WARNING, "IEC 62485-2"),
    /** Connectors opened under load draw an arc. */
    CONNECTORS_UNDER_LOAD(Severity.DANGER, "IEC 62548-1"),
    /** An AC-coupled system trips in an outage. */
    COUPLING(Severity.NOTICE, "practice for AC-coupled systems"),
    /** Direct voltage above what is safe to touch. */
    DIRECT_VOLTAGE(Severity.DANGER, "IEC 60364-4-41; IEC 62548-1"),
    /** The short-circuit current of the bank is not known. */
    FAULT_CURRENT_UNKNOWN(Severity.WARNING, "IEC 62485-2"),
    /** A discharged lead-acid bank can freeze. */
    FREEZING(Severity.NOTICE, "freezing point of sulphuric acid by density"),
    /** Carbon monoxide of a generator. */
    GENERATOR_EXHAUST(Severity.DANGER, "ISO 8528-13"),
    /** The generator cannot make up the shortfall. */
    GENERATOR_HOURS(Severity.NOTICE, "arithmetic"),
    /** A generator joined to another source. */
    GENERATOR_TRANSFER(Severity.DANGER, "IEC 60364-5-55; NFPA 70 702"),
    /** A heated bank depends on its heater. */
    HEATED_BANK(Severity.NOTICE, "data sheet of the battery"),
    /** Loose terminals get hot. */
    HOT_TERMINALS(Severity.WARNING, "IEC 62485-2"),
    /** Lead-acid cells give off hydrogen. */
    HYDROGEN(Severity.DANGER, "IEC 62485-2"),
    /** Batteries are heavy. */
    LIFTING(Severity.CAUTION, "ISO 11228-1"),
    /** Lithium cells can burn. */
    LITHIUM_FIRE(Severity.WARNING, "IEC 62619"),
    /** The inverter makes mains voltage. */
    LIVE_OUTPUT(Severity.DANGER, "IEC 60364-4-41"),
    /** Old and new batteries do not go together. */
    MIXED_BATTERIES(Severity.NOTICE, "IEEE 1361"),
    /** The bond of neutral and earth must exist exactly once. */
    NEUTRAL_EARTH_BOND(Severity.DANGER, "IEC 60364-5-55; NFPA 70 250.30"),
    /** Parallel strings charge unevenly. */
    PARALLEL_STRINGS(Severity.NOTICE, "IEEE 1361"),
    /** Conductors and devices are preliminary. */
    PRELIMINARY_SIZES(Severity.WARNING, "practice"),
    /** Reverse polarity destroys equipment and can burn. */
    REVERSE_POLARITY(Severity.WARNING, "IEC 62548-1"),
    /** A backup is no safety supply. */
    SAFETY_SUPPLY(Severity.WARNING, "IEC 60364-5-56"),
    /** A diversion load can fail. */
    SECOND_CHARGE_CONTROL(Severity.WARNING, "NFPA 70 690.72"),
    /** A faulty shore connection makes hull or body live. */
    SHORE_CONNECTION(Severity.DANGER, "IEC 60364-7-709; IEC 60364-7-721"),
    /** Capacitors stay charged. */
    STORED_CHARGE(Severity.WARNING, "IEC 62109-1"),
    /** Strings feed a faulty string. */
    STRING_FUSES(Severity.WARNING, "IEC 62548-1; NFPA 70 690.9"),
    /** Lightning nearby destroys equipment. */
    SURGE_PROTECTION(Severity.NOTICE, "IEC 60364-7-712; IEC 61643-32"),
    /** Loads shift and cables chafe in a vehicle. */
    VEHICLE(Severity.WARNING, "IEC 60364-7-721"),
    /** Wind and snow load the array. */
    WIND_AND_SNOW(Severity.WARNING, "EN 1991-1-3, EN 1991-1-4; ASCE 7");

    private final Severity severity;
    private final String source;

    HazardCode(Severity severity, String source) {
        this.severity = severity;
        this.source = source;
    }

    /** Returns the stable code under which the hazard appears in answers: {@code bankShortCircuit}. */
    public String code() {
        return Scalars.name(this);
    }

    /** Returns the severity, by ANSI Z535.6. */
    public Severity severity() {
        return severity;
    }

    /** Returns the clause of the standard that the hazard rests on, or the practice where no standard states it. */
    public String source() {
        return source;
    }
}
