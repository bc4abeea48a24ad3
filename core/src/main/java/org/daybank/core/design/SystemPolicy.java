package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

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
        @Assumed(
                value = "125 A",
                least = "10 A",
                most = "2000 A",
                sensible = "100–250 A",
                source = "copper and switchgear")
        Current bankCurrent,

        @Assumed(value = "0.5", least = "0", most = "1", source = "halfway, without hourly weather at hand")
        Ratio coldSpell,

        @Assumed(
                value = "14 d",
                least = "1 d",
                most = "365 d",
                sensible = "7–21 d",
                source = "a lead-acid bank kept low for weeks sulphates")
        TimeSpan longestRecovery,

        @Assumed(
                value = "5",
                least = "0",
                most = "100",
                sensible = "5–30",
                source = "enough to show a shortage that comes every other year")
        int simulatedYears,

        @Assumed(value = "1", least = "0", source = "any will do")
        int seed,

        @Assumed(value = "40", least = "1", most = "1000", source = "a fraction of a second")
        int mostSimulated,

        @Assumed(
                value = "10 h",
                least = "1 h",
                most = "50 h",
                sensible = "5–10 h",
                source = "a tenth of the capacity in an hour: custom, and within what every bank takes")
        TimeSpan engineFills,

        @Assumed(value = "3", least = "0", most = "20", source = "as many as a customer reads")
        int alternatives)
        implements SystemPolicyBuilder.With {
    private static final SystemPolicy STANDARD = Policies.standard(SystemPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public SystemPolicy {
        Policies.check(
                SystemPolicy.class,
                bankCurrent,
                coldSpell,
                longestRecovery,
                simulatedYears,
                seed,
                mostSimulated,
                engineFills,
                alternatives);
    }

    /** The cited defaults. */
    public static SystemPolicy standard() {
        return STANDARD;
    }
}
