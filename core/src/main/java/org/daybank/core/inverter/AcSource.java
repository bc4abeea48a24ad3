package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Shore power or a generator that the inverter is to take in: what comes, and what is wished of it.
 *
 * @param current most that it gives on each line; absent when it gives whatever is asked
 * @param coversPeaks whether the loads' peaks fall only while it is there, so that it may carry them together with the bank
 * @param chargingCurrent into the bank, the least that is wished; absent when any will do
 * @param maximumChargeCurrent most that the bank takes; absent when not known
 * @param longestTransfer interruption that the loads live through; absent when they do not care
 */
@RecordBuilder
public record AcSource(
        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") @Nullable
        Current current,

        @Assumed(value = "false", source = "the bank alone must carry the peaks")
        Boolean coversPeaks,

        @Bounds(exclusiveMinimum = "0 A", maximum = "100 kA") @Nullable
        Current chargingCurrent,

        @Bounds(exclusiveMinimum = "0 A", maximum = "100 kA") @Nullable
        Current maximumChargeCurrent,

        @Bounds(minimum = "0 s", maximum = "1 h", sensible = "10–20 ms for computers") @Nullable
        TimeSpan longestTransfer)
        implements AcSourceBuilder.With {
    /**
     * Validates the source.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds or contradicts another
     */
    public AcSource {
        coversPeaks = Defaults.otherwise(coversPeaks, AcSource.class, "coversPeaks");
        Validation.of(AcSource.class, current, coversPeaks, chargingCurrent, maximumChargeCurrent, longestTransfer)
                .that(
                        !coversPeaks || current != null,
                        "current",
                        ProblemCode.MISSING,
                        "current must be given where coversPeaks is true, but was left out.")
                .notAbove("chargingCurrent", chargingCurrent, "maximumChargeCurrent", maximumChargeCurrent)
                .done();
    }
}
