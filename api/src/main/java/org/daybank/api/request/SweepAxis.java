package org.daybank.api.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.sweep.Axis;
import org.jspecify.annotations.Nullable;

/**
 * What varies, and how: values one by one, a range, or a distribution. Values are written as the base writes them.
 *
 * @param path of a member of the base, as in {@code policy.autonomy} or {@code loads[3].power}
 * @param values one by one
 * @param from first value of a range
 * @param to last value of a range
 * @param count how many values a range has on a grid
 * @param spacing how the values of a range are spaced
 * @param distribution how likely each value is, where cases are drawn
 */
public record SweepAxis(
        String path,

        @Bounds(minimumItems = 1, maximumItems = Axis.MOST) @Nullable
        List<JsonNode> values,

        @Nullable JsonNode from,
        @Nullable JsonNode to,

        @Bounds(minimum = "1", maximum = "1000000") @Assumed(value = "2", source = "the two ends")
        Integer count,

        @Assumed(value = "linear", source = "equal distances")
        Spacing spacing,

        @Nullable SweepDistribution distribution) {
    /** How values are spaced. */
    public enum Spacing {
        /** At equal distances. */
        LINEAR,
        /** Each the same multiple of the one before. */
        LOGARITHMIC
    }

    /** Refuses what says nothing, or two things at once. */
    public SweepAxis {
        count = Defaults.otherwise(count, SweepAxis.class, "count");
        spacing = Defaults.otherwise(spacing, SweepAxis.class, "spacing");
        long ways = Stream.of(values != null, from != null || to != null, distribution != null)
                .filter(given -> given)
                .count();
        Validation.of(SweepAxis.class, path, values, from, to, count, spacing, distribution)
                .that(
                        ways == 1,
                        "",
                        ways == 0 ? ProblemCode.MISSING : ProblemCode.CONFLICT,
                        () -> "an axis takes one of values, from with to, and distribution, but %d are given"
                                .formatted(ways))
                .that(from == null || to != null, "to", ProblemCode.MISSING, "to is missing: a range has two ends")
                .that(to == null || from != null, "from", ProblemCode.MISSING, "from is missing: a range has two ends")
                .done();
        values = values == null ? null : List.copyOf(values);
    }
}
