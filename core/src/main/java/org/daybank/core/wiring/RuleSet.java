package org.daybank.core.wiring;

/** Whose rules conductors and devices are sized by; each has its own sizes. */
public enum RuleSet {
    /** IEC 60364 and IEC 62548-1, with the sizes of IEC 60228 in mm². */
    IEC,
    /** NFPA 70, with American wire gauges. */
    NFPA
}
