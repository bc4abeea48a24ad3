package org.daybank.core.inverter;

/**
 * Trackers of one inverter that are connected alike.
 *
 * @param trackers how many
 * @param strings in parallel on each
 * @param series modules in each string
 */
public record TrackerStrings(int trackers, int strings, int series) {}
