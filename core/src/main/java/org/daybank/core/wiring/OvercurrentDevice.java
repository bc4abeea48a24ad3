package org.daybank.core.wiring;

import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;

/**
 * What protects a circuit.
 *
 * @param kind fuse or circuit-breaker
 * @param rating standard rated current
 * @param leastVoltage that it must be rated to break
 * @param directCurrent whether that voltage is direct: a device rated for alternating current alone will not break it
 * @param leastInterruptingRating fault current that it must break; absent when that is not known
 * @param actsAt current that surely makes it act, in multiples of its rating
 */
public record OvercurrentDevice(
        DeviceKind kind,
        Current rating,
        Voltage leastVoltage,
        boolean directCurrent,
        Optional<Current> leastInterruptingRating,
        Ratio actsAt) {
    /** IEC 60364-4-43 433.1: the current that surely makes the device act is at most 1.45 of the ampacity. */
    private static final double OVERLOAD = 1.45;

    /** Ampacity that a conductor needs for this device to protect it: its rating, or more where it acts late. */
    Current ampacityNeeded() {
        return rating.times(Math.max(1, actsAt.fraction() / OVERLOAD));
    }
}
