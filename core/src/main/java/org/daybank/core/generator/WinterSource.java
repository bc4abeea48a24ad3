package org.daybank.core.generator;

/** What brings the energy that the sun leaves missing. */
public enum WinterSource {
    /** Fuel through an engine generator. */
    ENGINE,
    /** More modules than the other months need. */
    MODULES
}
