package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * A vehicle's alternator that charges the bank through a DC converter while the engine drives.
 *
 * @param current into the bank, at its nominal voltage
 * @param windows times of day at which the vehicle drives, on a mean day
 */
public record Alternator(
        @Bounds(exclusiveMinimum = "0 A", maximum = "1000 A")
        Current current,

        @Bounds(minimumItems = 1, maximumItems = 24)
        @Assumed(source = "an hour of driving a day, half in the morning, half in the evening")
        List<TimeWindow> windows) {
    private static final List<TimeWindow> CUSTOMARY =
            List.of(TimeWindow.parse("08:00-08:30"), TimeWindow.parse("17:00-17:30"));

    /**
     * Takes the customary windows where none are given.
     *
     * @throws org.daybank.core.schema.InvalidInput when the current is absent or a value is out of range
     */
    public Alternator {
        windows = windows == null ? CUSTOMARY : windows;
        Validation.of(Alternator.class, current, windows).done();
        windows = List.copyOf(windows);
    }

    /** Into the bank on a mean day. */
    public Charge daily() {
        return current.times(TimeWindow.daily(windows));
    }

    /** Into a bank of so many volts in an hour of the day. */
    double watts(double volts, int hour) {
        return current.amperes() * volts * TimeWindow.share(windows, hour);
    }
}
