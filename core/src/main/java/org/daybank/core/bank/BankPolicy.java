package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when a bank is sized.
 *
 * @param autonomy time the bank carries the loads without sun
 * @param depthOfDischarge deepest share of the capacity taken over the autonomy
 * @param dailyDepthOfDischarge deepest share taken in one ordinary day
 * @param surgeRate largest short current, in multiples of the rated capacity for each hour
 * @param parallelFactor share of its own current that each string after the first adds: strings never share evenly, and the
 *     battery management of a lithium string switches it off when its part is too large
 * @param advisedLeadAcidStrings strings of lead-acid batteries beyond which a bank of larger cells is advised
 * @param resistanceFactor internal resistance of a half-empty, cool bank over that of the data sheet, full at 25 °C
 * @param endOfLifeFraction share of the rated capacity that is left when a bank counts as worn
 * @param wornBankCarriesAutonomy whether a worn bank must still carry the whole autonomy
 * @param designMargin added on top, for what is not known yet
 */
@RecordBuilder
public record BankPolicy(
        @Bounds(minimum = "0.1 d", maximum = "60 d", sensible = "2–14 d")
        @Assumed(value = "3 d", source = "IEEE 1562: more when critical")
        TimeSpan autonomy,

        @Bounds(minimum = "0.05", maximum = "1", sensible = "lead-acid 0.4–0.8, lithium 0.7–0.9")
        @Assumed(value = "leadAcid 0.5, lithium 0.8", source = "customary for long life")
        RatioByFamily depthOfDischarge,

        @Bounds(minimum = "0.05", maximum = "1", sensible = "lead-acid 0.15–0.30")
        @Assumed(value = "leadAcid 0.2, lithium 0.8", source = "practice with IEEE 1013")
        RatioByFamily dailyDepthOfDischarge,

        @Bounds(minimum = "0.05", maximum = "20", sensible = "lead-acid 0.5–2, lithium 0.5–2")
        @Assumed(value = "leadAcid 1, lithium 1", source = "short discharge that data sheets commonly allow")
        RatioByFamily surgeRate,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "lead-acid 1, lithium 0.8–1")
        @Assumed(
                value = "leadAcid 1, lithium 0.9",
                source = "customary in data sheets of batteries with a management system")
        RatioByFamily parallelFactor,

        @Bounds(minimum = "1", maximum = "64", sensible = "2–4")
        @Assumed(value = "3", source = "custom: more strings charge unevenly")
        int advisedLeadAcidStrings,

        @Bounds(minimum = "1", maximum = "5", sensible = "1.3–2")
        @Assumed(value = "1.5", source = "battery handbooks: about twice as much when empty or at −20 °C")
        Ratio resistanceFactor,

        @Bounds(minimum = "0.3", maximum = "1", sensible = "0.7–0.8") @Assumed(value = "0.8", source = "IEEE 1013")
        Ratio endOfLifeFraction,

        @Assumed(value = "false", source = "depth limits leave room for wear already")
        boolean wornBankCarriesAutonomy,

        @Bounds(minimum = "0", maximum = "1", sensible = "0–0.25") @Assumed(value = "0.1", source = "IEEE 1013")
        Ratio designMargin)
        implements BankPolicyBuilder.With {
    private static final BankPolicy STANDARD = Defaults.of(BankPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public BankPolicy {
        Validation.of(
                        BankPolicy.class,
                        autonomy,
                        depthOfDischarge,
                        dailyDepthOfDischarge,
                        surgeRate,
                        parallelFactor,
                        advisedLeadAcidStrings,
                        resistanceFactor,
                        endOfLifeFraction,
                        wornBankCarriesAutonomy,
                        designMargin)
                .done();
    }

    /** The cited defaults. */
    public static BankPolicy standard() {
        return STANDARD;
    }
}
