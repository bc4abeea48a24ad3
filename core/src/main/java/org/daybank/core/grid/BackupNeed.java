package org.daybank.core.grid;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

/**
 * What a bank holds for an outage.
 *
 * @param usable energy between full and cut-off, at the bank
 * @param startsWith share of it that is there when the grid goes
 * @param sunCounts whether the array goes on charging in an outage
 * @param chargeEfficiency share of what is charged that comes out again
 * @param longest time beyond which no outage is followed
 */
public record BackupNeed(
        Energy usable,

        @Assumed(value = "1", least = "0", most = "1", source = "a bank kept full for outages")
        Ratio startsWith,

        @Assumed(value = "false", source = "the careful guess: an outage in the dark")
        Boolean sunCounts,

        @Assumed(
                value = "0.95",
                least = "0.5",
                most = "1",
                sensible = "0.85 lead-acid, 0.95 lithium",
                source = "typical of lithium iron phosphate")
        Ratio chargeEfficiency,

        @Assumed(value = "14 d", least = "1 h", most = "60 d", source = "longer ones are seldom planned for")
        TimeSpan longest) {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or out of range
     */
    public BackupNeed {
        startsWith = Policies.otherwise(startsWith, BackupNeed.class, "startsWith");
        sunCounts = Policies.otherwise(sunCounts, BackupNeed.class, "sunCounts");
        chargeEfficiency = Policies.otherwise(chargeEfficiency, BackupNeed.class, "chargeEfficiency");
        longest = Policies.otherwise(longest, BackupNeed.class, "longest");
        new Validation()
                .required("usable", usable)
                .above("usable", usable, Energy.ZERO)
                .done();
        Policies.check(BackupNeed.class, usable, startsWith, sunCounts, chargeEfficiency, longest);
    }
}
