package org.daybank.core.load;

/** The waveform that an inverter makes, or that a load needs. */
public enum Waveform {
    /** A sine like the grid's, with less than about 3 % distortion: every load runs on it. */
    SINE,
    /** Steps instead of a sine, 20 to 30 % distortion: heats motors, disturbs what is sensitive. */
    MODIFIED_SINE;

    /** Whether a load that needs {@code needed} runs on this waveform. */
    public boolean satisfies(Waveform needed) {
        return this == SINE || needed == MODIFIED_SINE;
    }
}
