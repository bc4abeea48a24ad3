package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * A mean over years, and between which bounds the mean of all such years lies with 95 % confidence, by Student's t. Where no
 * year differs from another the bounds fall together: what no year shows may still come once in more years than these.
 *
 * @param mean over the years
 * @param low not below zero; absent for a single year
 * @param high not above one; absent for a single year
 */
public record ConfidenceInterval(
        Ratio mean, @Nullable Ratio low, @Nullable Ratio high) {
    /** Of shares between 0 and 1, at least one. */
    static ConfidenceInterval of(List<Ratio> shares) {
        double mean = shares.stream().mapToDouble(Ratio::fraction).average().orElseThrow();
        if (shares.size() == 1) {
            return new ConfidenceInterval(Ratio.of(mean), null, null);
        }
        double squares = shares.stream()
                .mapToDouble(share -> (share.fraction() - mean) * (share.fraction() - mean))
                .sum();
        double error = Math.sqrt(squares / (shares.size() - 1) / shares.size());
        double reach = StudentT.at95Percent(shares.size() - 1) * error;
        return new ConfidenceInterval(
                Ratio.of(mean), Ratio.of(Math.max(0, mean - reach)), Ratio.of(Math.min(1, mean + reach)));
    }
}
