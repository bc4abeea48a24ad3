package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
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
        @Nullable Current current,

        @Assumed(value = "false", source = "the bank alone must carry the peaks")
        Boolean coversPeaks,

        @Nullable Current chargingCurrent,
        @Nullable Current maximumChargeCurrent,
        @Nullable TimeSpan longestTransfer)
        implements AcSourceBuilder.With {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value can never be right
     */
    public AcSource {
        coversPeaks = Defaults.otherwise(coversPeaks, AcSource.class, "coversPeaks");
        new Validation()
                .above("current", current, Current.ZERO)
                .that(
                        !coversPeaks || current != null,
                        "current",
                        ProblemCode.MISSING,
                        "current must be given where coversPeaks is true: it says how much of the peaks the source carries")
                .above("chargingCurrent", chargingCurrent, Current.ZERO)
                .above("maximumChargeCurrent", maximumChargeCurrent, Current.ZERO)
                .that(
                        chargingCurrent == null
                                || maximumChargeCurrent == null
                                || chargingCurrent.compareTo(maximumChargeCurrent) <= 0,
                        "chargingCurrent",
                        ProblemCode.INCONSISTENT,
                        () -> "chargingCurrent must be at most maximumChargeCurrent %s, but was %s."
                                .formatted(maximumChargeCurrent, chargingCurrent))
                .atLeast("longestTransfer", longestTransfer, TimeSpan.ZERO)
                .done();
    }
}
