package org.daybank.api.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.daybank.core.sweep.Sampling;
import org.daybank.core.sweep.Sweep;
import org.jspecify.annotations.Nullable;

/**
 * How far does a result spread when inputs are uncertain, and which of them matters most?
 *
 * @param calculator name of its path, as in {@code bank-capacity}
 * @param base a request of that calculator; what an axis varies may be left out
 * @param axes what is uncertain, and how: lists, ranges and distributions are drawn from
 * @param outputs paths into the result, each to a number
 * @param draws points of each of two samples, best a power of two; it takes {@code draws · (axes + 2)} cases
 * @param seed of the draws: the same seed gives the same figures
 */
public record UncertaintyRequest(
        String calculator,
        @Nullable JsonNode base,

        @Bounds(minimumItems = 1, maximumItems = Sweep.MOST_AXES)
        List<SweepAxis> axes,

        @Bounds(minimumItems = 1, maximumItems = Sweep.MOST_OUTPUTS)
        List<String> outputs,

        @Bounds(minimum = "2", maximum = "1048576")
        @Assumed(value = "1024", source = "indices to about one or two hundredths")
        Integer draws,

        @Bounds(minimum = "0", maximum = "2147483647") @Assumed(value = "0", source = "any will do")
        Integer seed) {
    /** Refuses what can never be right. */
    public UncertaintyRequest {
        draws = Defaults.otherwise(draws, UncertaintyRequest.class, "draws");
        seed = Defaults.otherwise(seed, UncertaintyRequest.class, "seed");
        Validation.of(UncertaintyRequest.class, calculator, base, axes, outputs, draws, seed)
                .done();
        axes = List.copyOf(axes);
        outputs = List.copyOf(outputs);
    }

    /** The same as a sweep; how its cases are chosen is for the draws to say. */
    public SweepRequest sweep() {
        return new SweepRequest(calculator, base, axes, outputs, Sampling.random(draws, seed), null);
    }
}
