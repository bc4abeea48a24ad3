package org.daybank.api.request;

import java.util.List;
import java.util.Optional;
import org.daybank.api.wire.Inline;
import org.daybank.core.schema.ProblemCode;
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
        List<Circuit> circuits, @Nullable ArrayRuns array, WiringPolicy policy) {
    private static final int MOST_CIRCUITS = 200;

    /** Refuses what can never be right. */
    public WiringRequest {
        new Validation()
                .notEmpty("circuits", circuits)
                .that(
                        circuits == null || circuits.size() <= MOST_CIRCUITS,
                        "circuits",
                        ProblemCode.OUT_OF_RANGE,
                        "circuits must be at most " + MOST_CIRCUITS)
                .done();
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
