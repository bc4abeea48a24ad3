package org.daybank.core.inverter;

import java.util.List;
import org.daybank.core.quantity.Power;

/**
 * String inverters that are connected alike.
 *
 * @param units how many
 * @param modules on each
 * @param power of the modules on each at standard test conditions
 * @param trackers what is on the trackers of each
 */
public record UnitStrings(int units, int modules, Power power, List<TrackerStrings> trackers) {
    /** Keeps a copy. */
    public UnitStrings {
        trackers = List.copyOf(trackers);
    }

    /** Trackers in use on each unit. */
    int trackersUsed() {
        return trackers.stream().mapToInt(TrackerStrings::trackers).sum();
    }

    /** Strings on the fullest tracker. */
    public int mostStrings() {
        return trackers.stream().mapToInt(TrackerStrings::strings).max().orElse(0);
    }

    /** The longest string. */
    public int longest() {
        return trackers.stream().mapToInt(TrackerStrings::series).max().orElse(0);
    }

    /** The shortest string. */
    int shortest() {
        return trackers.stream().mapToInt(TrackerStrings::series).min().orElse(0);
    }
}
