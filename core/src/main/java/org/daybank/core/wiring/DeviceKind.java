package org.daybank.core.wiring;

/** Families of overcurrent devices. */
public enum DeviceKind {
    /** A fuse made for photovoltaic direct current: gPV of IEC 60269-6, UL 248-19. */
    PHOTOVOLTAIC_FUSE,
    /** A fuse for general use: gG of IEC 60269, class T or the like. */
    FUSE,
    /** A circuit-breaker: IEC 60898-1 or 60947-2, UL 489. */
    BREAKER
}
