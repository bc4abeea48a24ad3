package org.daybank.core.working;

/** A family of rules for tests; the message resource has no sentences for it. */
enum SampleRule implements Rule {
    COLDEST_VOLTAGE,
    WAVEFORM,
    CLIPPING;

    @Override
    public String source() {
        return "test";
    }
}
