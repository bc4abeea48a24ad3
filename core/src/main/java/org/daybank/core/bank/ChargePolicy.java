package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.VoltageCoefficient;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

/**
 * What a planner may argue with about charging.
 *
 * @param leadAcidCompensation change of the charging voltage of a lead-acid cell for each kelvin over 25 °C
 * @param lithiumFloat whether a full lithium bank is held at its float voltage; else charging rests until its voltage has fallen
 * @param coldestCompensated temperature below which the voltage is not raised further
 * @param warmestCompensated temperature above which it is not lowered further
 * @param equalisationInterval time from one equalising charge to the next; vented cells only
 * @param equalisationTime how long an equalising charge lasts
 */
@RecordBuilder
public record ChargePolicy(
        @Assumed(
                value = "-5 mV/K",
                least = "-8 mV/K",
                most = "0 mV/K",
                sensible = "−3…−5 mV/K",
                source = "manufacturers' charging instructions; the data sheet wins")
        VoltageCoefficient leadAcidCompensation,

        @Assumed(value = "false", source = "full cells age faster under voltage; only where the data sheet asks for it")
        boolean lithiumFloat,

        @Assumed(value = "-20 Cel", least = "-40 Cel", most = "25 Cel", source = "where controllers stop compensating")
        Temperature coldestCompensated,

        @Assumed(value = "50 Cel", least = "25 Cel", most = "60 Cel", source = "where controllers stop compensating")
        Temperature warmestCompensated,

        @Assumed(
                value = "30 d",
                least = "7 d",
                most = "365 d",
                sensible = "30–90 d",
                source = "manufacturers' charging instructions; sooner when the acid of the cells differs in gravity by"
                        + " more than 0.03")
        TimeSpan equalisationInterval,

        @Assumed(
                value = "2 h",
                least = "0.5 h",
                most = "24 h",
                sensible = "1–4 h",
                source = "manufacturers' charging instructions; until no cell's gravity rises any more")
        TimeSpan equalisationTime)
        implements ChargePolicyBuilder.With {
    private static final ChargePolicy STANDARD = Policies.standard(ChargePolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public ChargePolicy {
        Policies.check(
                ChargePolicy.class,
                leadAcidCompensation,
                lithiumFloat,
                coldestCompensated,
                warmestCompensated,
                equalisationInterval,
                equalisationTime);
    }

    /** The cited defaults. */
    public static ChargePolicy standard() {
        return STANDARD;
    }
}
