package org.daybank.core.wiring;

/** How cables lie, which decides how well they cool. */
public enum InstallationMethod {
    /** Single-core cables in conduit on a wall (reference method B1 of IEC 60364-5-52); raceway in NFPA 70. */
    CONDUIT,
    /** Cables clipped direct to a wall or tray (reference method C); NFPA 70 table 310.16 makes no difference. */
    CLIPPED_DIRECT
}
