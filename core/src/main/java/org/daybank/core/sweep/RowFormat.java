package org.daybank.core.sweep;

/** Ways to write rows as text, a line each; in UTF-8, with the decimal point and no locale. */
public enum RowFormat {
    /** Comma-separated values (RFC 4180) after a line that names the columns; lines end with a line feed. */
    CSV,
    /** One JSON object to a line. */
    NDJSON
}
