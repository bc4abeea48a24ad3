package org.daybank.api.request;

import java.util.List;
import java.util.Optional;
import org.daybank.api.wire.Inline;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.wiring.ArrayRuns;
import org.daybank.core.wiring.Circuit;
import org.daybank.core.wiring.StringVoltages;
import org.daybank.core.wiring.WiringPlan;
import org.daybank.core.wiring.WiringPolicy;
import org.jspecify.annotations.Nullable;

/**
 * Which conductors, overcurrent devices and disconnects do circuits take?
 *
 * @param circuits to be sized
 * @param array to be shown at higher string voltages; absent when that is not asked
 * @param policy what is assumed
 */
public record WiringRequest(
        @Bounds(minimumItems = 1, maximumItems = 200) List<Circuit> circuits,
        @Nullable ArrayRuns array,
        WiringPolicy policy) {
    /** Refuses what is missing or out of range. */
    public WiringRequest {
        Validation.of(WiringRequest.class, circuits, array, policy).done();
        circuits = List.copyOf(circuits);
    }

    /**
     * What was found.
     *
     * @param plan every circuit
     * @param stringVoltages the array at higher string voltages; absent when that was not asked
     */
    public record Answer(@Inline WiringPlan plan, Optional<StringVoltages> stringVoltages) {}

    /** Asks the library. */
    public Answer answer() {
        return new Answer(
                WiringPlan.of(circuits, policy),
                Optional.ofNullable(array).map(runs -> StringVoltages.of(runs, policy)));
    }
}
