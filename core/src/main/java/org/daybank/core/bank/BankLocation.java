package org.daybank.core.bank;

/** Where a bank stands. */
public enum BankLocation {
    /** In an unheated shed or box: as cold as the air outside. */
    OUTDOORS,
    /** In a heated room. */
    INDOORS
}
