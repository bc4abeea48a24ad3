package org.daybank.core.schema;

/** The kinds of problem that an input can have. */
public enum ProblemCode {
    /** A value that must be given was left out. */
    MISSING,
    /** The value lies outside the accepted range. */
    OUT_OF_RANGE,
    /** The value cannot be read as what is expected: a quantity, a name, a list. */
    UNREADABLE,
    /** There is no member, parameter or column of this name. */
    UNKNOWN_NAME,
    /** Two values exclude each other, or one is given twice. */
    CONFLICT,
    /** Two values contradict each other. */
    INCONSISTENT,
    /** The text as a whole is not JSON, CSV or whatever it should be. */
    MALFORMED,
    /** The combination is possible but not covered by the calculation. */
    UNSUPPORTED,
    /** More problems were found than are listed. */
    MORE
}
