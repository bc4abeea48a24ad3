package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * AC from outside, a shore connection or the grid, that carries the loads while it is there and charges the bank through a
 * charger. What the array brings goes first.
 *
 * @param power most that is taken
 * @param windows times of day at which it is there
 * @param chargerEfficiency of the charger between its AC and the bank
 */
public record ShorePower(
        @Bounds(exclusiveMinimum = "0 W", maximum = "100 kW")
        Power power,

        @Bounds(minimumItems = 1, maximumItems = 24) @Assumed(source = "all day")
        List<TimeWindow> windows,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.85–0.94")
        @Assumed(value = "0.9", source = "typical data sheets")
        Ratio chargerEfficiency) {
    private static final TimeWindow ALL_DAY = new TimeWindow(0, 24 * 60);

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is absent or out of range
     */
    public ShorePower {
        windows = windows == null ? List.of(ALL_DAY) : windows;
        chargerEfficiency = Defaults.otherwise(chargerEfficiency, ShorePower.class, "chargerEfficiency");
        Validation.of(ShorePower.class, power, windows, chargerEfficiency).done();
        windows = List.copyOf(windows);
    }

    /** What reaches the bank's side of the charger in an hour of the day. */
    double watts(int hour) {
        return power.watts() * chargerEfficiency.fraction() * TimeWindow.share(windows, hour);
    }
}
