package org.daybank.core.grid;

/** How long a kilowatt-hour that was exported under net metering can pay for one that is imported. */
public enum CreditPeriod {
    /** Within its month. */
    MONTH,
    /** Until the end of the year of account. */
    YEAR,
    /** For ever. */
    UNLIMITED
}
