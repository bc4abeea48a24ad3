package org.daybank.core.generator;

import org.daybank.core.working.Rule;

/** The rules that a generator is checked against. */
public enum GeneratorRule implements Rule {
    /** The charging current is within what the bank accepts. */
    BANK_CHARGE_CURRENT("data sheet of the battery"),
    /** The running hours fit into the month. */
    HOURS_OF_MONTH("arithmetic"),
    /** The load of the generator is not below the lowest recommended share. */
    LEAST_LOAD("ISO 8528-1; practice"),
    /** The load of the generator is not above the highest recommended share. */
    MOST_LOAD("ISO 8528-1; practice");

    private final String source;

    GeneratorRule(String source) {
        this.source = source;
    }

    @Override
    public String source() {
        return source;
    }
}
