package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with about the system as a whole.
 *
 * @param bankCurrent most that cable, fuse and disconnect between bank and inverter should carry
 * @param coldSpell how far from the coldest month's mean towards the record low the air goes for as long as the autonomy
 * @param longestRecovery longest that the array should take in the design month to refill the bank
 * @param simulatedYears how many made-up years a design is proved with where there is no weather year; none for a design that
 *     keeps the rules and is not simulated
 * @param seed of the made-up years; the same seed gives the same years
 * @param mostSimulated most designs that are simulated to reach an availability that was asked for
 * @param engineFills time in which the charger of a backup engine alone would fill the bank; the bank's own limit counts where it
 *     is lower
 * @param alternatives how many other designs are told at most
 */
@RecordBuilder
public record SystemPolicy(
        @Bounds(minimum = "10 A", maximum = "2000 A", sensible = "100–250 A")
        @Assumed(value = "125 A", source = "copper and switchgear")
        Current bankCurrent,

        @Bounds(minimum = "0", maximum = "1")
        @Assumed(value = "0.5", source = "halfway, without hourly weather at hand")
        Ratio coldSpell,

        @Bounds(minimum = "1 d", maximum = "365 d", sensible = "7–21 d")
        @Assumed(value = "14 d", source = "a lead-acid bank kept low for weeks sulphates")
        TimeSpan longestRecovery,

        @Bounds(minimum = "0", maximum = "100", sensible = "5–30")
        @Assumed(value = "5", source = "enough to show a shortage that comes every other year")
        int simulatedYears,

        @Bounds(minimum = "0", maximum = "2147483647") @Assumed(value = "1", source = "any will do")
        int seed,

        @Bounds(minimum = "1", maximum = "1000") @Assumed(value = "40", source = "a fraction of a second")
        int mostSimulated,

        @Bounds(minimum = "1 h", maximum = "50 h", sensible = "5–10 h")
        @Assumed(
                value = "10 h",
                source = "a tenth of the capacity in an hour: custom, and within what every bank takes")
        TimeSpan engineFills,

        @Bounds(minimum = "0", maximum = "20") @Assumed(value = "3", source = "as many as a customer reads")
        int alternatives)
        implements SystemPolicyBuilder.With {
    private static final SystemPolicy STANDARD = Defaults.of(SystemPolicy.class);

    /**
     * Validates each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public SystemPolicy {
        Validation.of(
                        SystemPolicy.class,
                        bankCurrent,
                        coldSpell,
                        longestRecovery,
                        simulatedYears,
                        seed,
                        mostSimulated,
                        engineFills,
                        alternatives)
                .done();
    }

    /** The cited defaults. */
    public static SystemPolicy standard() {
        return STANDARD;
    }
}
