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
 * What does a calculator say of many cases?
 *
 * @param calculator name of its path, as in {@code bank-capacity}
 * @param base a request of that calculator; what an axis varies may be left out
 * @param axes what varies
 * @param outputs paths into the result; every single value at the top of the result when absent
 * @param sampling how the cases are chosen
 * @param rows a part of the rows; all of them when absent
 */
public record SweepRequest(
        String calculator,
        @Nullable JsonNode base,

        @Bounds(minimumItems = 1, maximumItems = Sweep.MOST_AXES)
        List<SweepAxis> axes,

        @Bounds(maximumItems = Sweep.MOST_OUTPUTS) @Nullable List<String> outputs,

        @Assumed(source = "every point of the grid of the axes")
        Sampling sampling,

        @Nullable RowRange rows) {
    /** Refuses what can never be right. */
    public SweepRequest {
        sampling = sampling == null ? Sampling.grid() : sampling;
        Validation.of(SweepRequest.class, calculator, base, axes, outputs, sampling, rows)
                .done();
        axes = List.copyOf(axes);
        outputs = outputs == null ? null : List.copyOf(outputs);
    }

    /**
     * Rows by number.
     *
     * @param from the first, from 0
     * @param to after the last; absent, to the end
     */
    public record RowRange(
            @Bounds(minimum = "0", maximum = "2147483647") @Assumed(value = "0", source = "from the beginning")
            Integer from,

            @Bounds(minimum = "0", maximum = "2147483647") @Nullable
            Integer to) {
        /** Refuses what is no range. */
        public RowRange {
            from = Defaults.otherwise(from, RowRange.class, "from");
            Validation.of(RowRange.class, from, to)
                    .notBelow("to", to, "from", from)
                    .done();
        }
    }
}
