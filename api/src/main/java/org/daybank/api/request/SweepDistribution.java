package org.daybank.api.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * How likely each value of an uncertain quantity is. Values are written as the base writes them.
 *
 * @param kind which distribution
 * @param from lower end; of uniform and triangular
 * @param to upper end; of uniform and triangular
 * @param likeliest where the density is highest; of triangular
 * @param mean middle; of normal
 * @param deviation standard deviation, of temperatures in K; of normal
 * @param median half of the values lie below; of logNormal
 * @param factor geometric standard deviation, at least 1; of logNormal
 */
public record SweepDistribution(
        Kind kind,
        @Nullable JsonNode from,
        @Nullable JsonNode to,
        @Nullable JsonNode likeliest,
        @Nullable JsonNode mean,
        @Nullable JsonNode deviation,
        @Nullable JsonNode median,

        @Bounds(minimum = "1", maximum = "1000000") @Nullable
        Double factor) {
    /** Distributions. */
    public enum Kind {
        /** Every value between two ends as likely as any other. */
        UNIFORM("from", "to"),
        /** Rising in a line to the likeliest value, and falling from there. */
        TRIANGULAR("from", "to", "likeliest"),
        /** The bell of Gauss. */
        NORMAL("mean", "deviation"),
        /** Values whose logarithms are normal. */
        LOG_NORMAL("median", "factor");

        private final List<String> members;

        Kind(String... members) {
            this.members = List.of(members);
        }
    }

    /** Refuses members that are missing or have no place. */
    public SweepDistribution {
        Validation checks =
                Validation.of(SweepDistribution.class, kind, from, to, likeliest, mean, deviation, median, factor);
        if (kind != null) {
            Set<String> given = Stream.of(
                            from == null ? "" : "from",
                            to == null ? "" : "to",
                            likeliest == null ? "" : "likeliest",
                            mean == null ? "" : "mean",
                            deviation == null ? "" : "deviation",
                            median == null ? "" : "median",
                            factor == null ? "" : "factor")
                    .filter(name -> !name.isEmpty())
                    .collect(Collectors.toCollection(TreeSet::new));
            List<String> wanted = kind.members;
            wanted.forEach(
                    name -> checks.that(given.contains(name), name, ProblemCode.MISSING, () -> name + " is required."));
            given.forEach(name -> checks.that(
                    wanted.contains(name),
                    name,
                    ProblemCode.CONFLICT,
                    () -> "%s has no place here: this distribution takes %s"
                            .formatted(name, String.join(", ", wanted))));
        }
        checks.done();
    }
}
