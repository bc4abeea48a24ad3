package org.daybank.core.grid;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

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
        @Bounds(exclusiveMinimum = "0 Wh", maximum = "1000000 kWh")
        Energy usable,

        @Bounds(minimum = "0", maximum = "1") @Assumed(value = "1", source = "a bank kept full for outages")
        Ratio startsWith,

        @Assumed(value = "false", source = "the careful guess: an outage in the dark")
        Boolean sunCounts,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.85 lead-acid, 0.95 lithium")
        @Assumed(value = "0.95", source = "typical of lithium iron phosphate")
        Ratio chargeEfficiency,

        @Bounds(minimum = "1 h", maximum = "60 d")
        @Assumed(value = "14 d", source = "longer ones are seldom planned for")
        TimeSpan longest) {
    /**
     * Validates the need.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or outside its bounds
     */
    public BackupNeed {
        startsWith = Defaults.otherwise(startsWith, BackupNeed.class, "startsWith");
        sunCounts = Defaults.otherwise(sunCounts, BackupNeed.class, "sunCounts");
        chargeEfficiency = Defaults.otherwise(chargeEfficiency, BackupNeed.class, "chargeEfficiency");
        longest = Defaults.otherwise(longest, BackupNeed.class, "longest");
        Validation.of(BackupNeed.class, usable, startsWith, sunCounts, chargeEfficiency, longest)
                .done();
    }
}
