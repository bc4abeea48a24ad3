package org.daybank.core.wiring;

/** How a metric conductor is made up; American gauges are taken as stranded, two hundredths longer than the cable (ASTM B8). */
public enum Stranding {
    /** IEC 60228 class 2: stranded, for fixed wiring. */
    STRANDED,
    /** IEC 60228 class 5: flexible, as in battery and photovoltaic cable; copper only. */
    FLEXIBLE
}
